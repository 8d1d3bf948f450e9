package faultcase

var weightCases = []Case{
	{
		Name:  "The van weighs more than its plate allows",
		Patch: `{"vehicle": {"plate": {"gross": 2300}}}`,
		Finds: []string{"fault weight.total.over /vehicle/cases/away"},
	}, {
		Name:  "The van weighs nearly what its plate allows",
		Patch: `{"vehicle": {"plate": {"gross": 2450}}}`,
		Finds: []string{"close weight.total.close /vehicle/cases/away"},
	}, {
		Name:  "The front axle carries more than its plate allows",
		Patch: `{"vehicle": {"plate": {"front": 1250}}}`,
		Finds: []string{"fault weight.front-axle.over /vehicle/cases/away"},
	}, {
		Name:  "The front axle carries nearly what its plate allows",
		Patch: `{"vehicle": {"plate": {"front": 1350}}}`,
		Finds: []string{"close weight.front-axle.close /vehicle/cases/away"},
	}, {
		Name:  "The rear axle carries more than its plate allows",
		Patch: `{"vehicle": {"plate": {"rear": 1050}}}`,
		Finds: []string{"fault weight.rear-axle.over /vehicle/cases/away"},
	}, {
		Name:  "The rear axle carries nearly what its plate allows",
		Patch: `{"vehicle": {"plate": {"rear": 1120}}}`,
		Finds: []string{"close weight.rear-axle.close /vehicle/cases/away"},
	}, {
		Name:  "So much stands behind that the front axle is light",
		Patch: `{"vehicle": {"weighed": {"bare": {"front": 600, "rear": 1350}}}}`,
		Finds: []string{"close weight.front-axle.light /vehicle/cases/empty"},
	}, {
		Name:  "The laden van is within a few kilograms of the licence",
		Patch: `{"vehicle": {"plate": {"gross": 3500, "front": 2000, "rear": 2000}, "weighed": {"bare": {"front": 1700, "rear": 1360}}}}`,
		Finds: []string{"close weight.licence /vehicle/cases/away"},
	}, {
		Name:  "Everything heavy stands on the right",
		Patch: `{"fittings": {"kitchen": {"mass": 90}}}`,
		Finds: []string{"note weight.side /vehicle/cases/away"},
	}, {
		Name:  "More lies on the roof than the handbook allows",
		Patch: `{"vehicle": {"roof-limit": 5}}`,
		Finds: []string{"fault weight.roof /fittings/panel"},
	}, {
		Name:  "More lies on the roof than the handbook allows, raised over it on a rack nobody wrote down",
		Patch: `{"vehicle": {"roof-limit": 5}, "fittings": {"panel": {"at": {"z": "roof + 121"}}}}`,
		Finds: []string{"fault weight.roof /fittings/panel"},
	}, {
		Name:  "Car tyres are fitted that carry less than stands on them",
		Patch: `{"vehicle": {"tyres": {"front": {"load-index": 90}}}}`,
		Finds: []string{"fault weight.tyre.load /vehicle/tyres/front"},
	}, {
		Name:  "Tyres are fitted that carry less than the plate allows the axle",
		Patch: `{"vehicle": {"tyres": {"front": {"load-index": 96}}}}`,
		Finds: []string{"close weight.tyre.plate /vehicle/tyres/front"},
	}, {
		Name:  "The rear tyres are seven years old",
		Patch: `{"vehicle": {"tyres": {"rear": {"made": "2019-05-06"}}}}`,
		Finds: []string{"note weight.tyre.age /vehicle/tyres/rear"},
	}, {
		Name:  "The rear tyres are ten years old",
		Patch: `{"vehicle": {"tyres": {"rear": {"made": "2016-05-02"}}}}`,
		Finds: []string{"close weight.tyre.age /vehicle/tyres/rear"},
	}, {
		Name:  "A crate stands in the van that nobody has weighed",
		Patch: `{"fittings": {"crate": {"found": "yes", "at": {"x": 1300, "y": "left"}, "size": {"x": 300, "y": 300, "z": 300}}}}`,
		Finds: []string{"note weight.mass-unknown /fittings/crate"},
	}, {
		Name:  "Nobody has ever weighed the van",
		Patch: `{"vehicle": {"weighed": null}}`,
		Finds: []string{"note weight.never-weighed /vehicle"},
	}, {
		Name:  "A second weighing reads far more than was aboard",
		Patch: `{"vehicle": {"weighed": {"half-way": {"date": "2026-05-16", "front": 1230, "rear": 920, "step": 20, "aboard": {"fuel": "50 %", "fittings": ["kitchen"]}}}}}`,
		Finds: []string{"close weight.weighing.off /vehicle/weighed/half-way"},
	},
}
