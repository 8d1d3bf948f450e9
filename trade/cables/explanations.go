package cables

import "tumblehome/trade/finding"

// Explanations says what each code of this package means.
var Explanations = []finding.Explanation{
	{Code: "power.fuse.main", Meaning: "A battery has no main fuse, or none is planned yet.", Why: "A battery gives thousands of amperes into a short: enough to weld a spanner and to burn the van.",
		Clear: "A fuse within a hand's breadth of the positive post, no larger than its cable stands."},
	{Code: "power.fuse.none", Meaning: "A cable leaves what feeds it without a fuse.", Why: "A fuse protects the cable. Without one a short makes the cable glow.", Clear: "A fuse where the cable begins, no larger than the cable stands."},
	{Code: "power.fuse.ends", Meaning: "A cable joins two batteries and has a fuse at one end only, or nobody has said at which.", Why: "A short is fed from both ends; a fuse at one end leaves the other feeding it.", Clear: "A fuse at each end."},
	{Code: "power.fuse.great", Meaning: "A fuse is rated for more than its cable stands where it lies.", Why: "The cable is then the fuse.", Clear: "A smaller fuse, or a thicker cable."},
	{Code: "power.fuse.absurd", Meaning: "A fuse is rated for many times what its circuit draws.", Why: "The cable may stand it, but the thin leads of what hangs on it do not.", Clear: "A fuse that fits what is fed."},
	{Code: "power.fuse.small", Meaning: "A fuse does not carry what its circuit draws, or only just.", Why: "It goes when everything is on, or after a few hundred warm hours.", Clear: "The next larger fuse, if the cable stands it."},
	{Code: "power.fuse.far", Meaning: "A length of cable lies between what feeds it and its fuse.", Why: "That length is protected by nothing.", Clear: "Move the fuse to where the cable begins."},
	{Code: "power.fuse.breaking", Meaning: "A fuse cannot break the current that a short would draw at its place.", Why: "It bursts, and an arc goes on burning in it. One behind the main fuse may break less than it meets, at least 1000 A as a blade does, where the main fuse breaks it all: then that goes too.", Clear: "A fuse of a kind that breaks more: a block on the post, or class T for lithium."},
	{Code: "power.fuse.kind", Meaning: "Nobody has said how the main fuse is made.", Why: "Fuses of one rating break very different currents.", Clear: "Choose one that breaks what the battery gives, and write its kind."},
	{Code: "power.fuse.slow", Meaning: "A short at the far end of a cable is too weak to open its fuse at once.", Why: "The cable heats for seconds or minutes.", Clear: "A thicker cable, a shorter way or a smaller fuse."},
	{Code: "power.fuse.selective", Meaning: "A fuse sits behind another that is hardly larger.", Why: "A short takes both, and more goes dark than need be.", Clear: "At least twice the rating from one level to the next."},
	{Code: "power.fuse.twice", Meaning: "The main fuse is written at the battery and at its circuit, with two ratings.", Why: "It is one fuse, and only one of the two can be bought.", Clear: "The same rating in both places, or only one of them."},
	{Code: "power.fuse.string", Meaning: "Several panels stand side by side, and together they send more current back through a faulty one than it stands.", Why: "A shaded or broken panel draws what the others give, gets hot and may burn. With two panels that is seldom too much; from three on it often is.",
		Clear: "A fuse in the plus cable of each panel, no larger than the label on its back allows (maximum series fuse)."},
	{Code: "power.part.weak", Meaning: "An isolator, busbar or shunt is made for less than the main fuse lets pass.", Why: "It gets hot before the fuse goes.", Clear: "A stronger part, or a smaller main fuse."},
	{Code: "power.cable.thin", Meaning: "More current flows in a cable than it carries for good where it lies.", Why: "Its insulation softens, ages and at last burns.", Clear: "A thicker cable, fewer cables side by side, or a cooler place."},
	{Code: "power.cable.strand", Meaning: "A cable by itself is thinner than 1 mm².", Why: "It breaks where it is bent and shaken, sooner or later.", Clear: "1 mm² or more, or several in one sheath."},
	{Code: "power.cable.body", Meaning: "A circuit of the living space uses the body of the van as its negative.", Why: "Seams and paint carry badly, heat up and rust.", Clear: "A negative cable as thick as the positive."},
	{Code: "power.cable.bond", Meaning: "The bond from negative to the body is thinner than what it may have to carry.", Why: "It must carry a short until the fuse has gone.", Clear: "As thick as the battery's own cable."},
	{Code: "power.cable.mains", Meaning: "Mains and 12 V lie in one way.", Why: "Where insulation wears through, mains voltage reaches everything at 12 V.", Clear: "Two ways, or a divided duct; ask the electrician."},
	{Code: "power.cable.unchosen", Meaning: "A circuit has no cable written yet.", Why: "It cannot be bought, cut or tested.", Clear: "Take what is proposed, or write your own and have it checked."},
	{Code: "power.cable.unfed", Meaning: "A thing draws current and no circuit names it.", Why: "It has no cable and no fuse, and what it draws is left out of every sum.", Clear: "Name it among the loads of a circuit."},
	{Code: "power.cable.feeds-nothing", Meaning: "A circuit names nothing that it feeds, and is not the battery's own cable either.", Why: "Nobody can say how thick it must be, and what it should feed is left out of every sum.", Clear: "Name its loads, or take the circuit away."},
	{Code: "power.current.low", Meaning: "The current that is written is far below what the loads draw, or the source gives, by the catalogue; or that of a main cable is below what hangs on it.", Why: "A cable chosen for less gets warm and loses voltage, and its fuse blows.", Clear: "Write the greatest current. Where something never runs at full power, say so and accept it."},
	{Code: "power.volts", Meaning: "A thing is made for another voltage than it gets, or batteries of different voltages are joined.", Why: "Too much destroys it and may burn; on too little it does not run.", Clear: "A thing for the battery's voltage, or what is for the mains left to the electrician."},
	{Code: "power.battery.mixed", Meaning: "Batteries of different kinds are joined side by side.", Why: "Each wants its own charging voltage, and lithium sends lead more current than its cables stand.", Clear: "Batteries of one kind, best of one make, size and age."},
	{Code: "power.battery.load", Meaning: "A battery stands among the loads of a circuit.", Why: "It is joined to the other battery by a thin cable with a fuse at one end: the emptier one is charged through it without limit, and a short is fed from both ends.",
		Clear: "A battery of the same kind goes into the bank, side by side; another becomes a bank of its own, with a main fuse and a source."},
	{Code: "power.mains.by", Meaning: "Mains voltage is planned without anybody named to install it.", Why: "It kills, and in most places only licensed people may install it.", Clear: "Name an electrician; plan only its place and its money here."},
	{Code: "power.drop", Meaning: "More voltage stays in the cables than an appliance bears, charging wants, or you want.", Why: "Fridges cut out, pumps tire, lights dim, batteries stay half charged.", Clear: "A thicker cable or a shorter way."},
	{Code: "power.collapse", Meaning: "The battery and its cables cannot carry everything at once, or a circuit not even alone.", Why: "What converts draws more as its voltage falls, until all goes out.", Clear: "Thicker and shorter cables, a larger battery, or less at once."},
}
