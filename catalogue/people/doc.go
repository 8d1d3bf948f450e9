// Package people answers: how big is a person, and how much room does one of
// this stature need to lie, sit, stand and work?
//
// # What is known
//
// survey.csv holds eighteen body dimensions and body mass of 4 082 men and
// 1 986 women, computed from the public records of the US Army survey of 2012.
// Soldiers are fit: girths run low and shoulders wide (British tables print
// women's shoulders 60 mm narrower, so beds come out roomy). published.csv holds
// values printed for other peoples (British, US, Japanese, Hong Kong, German),
// each with how it is known.
//
// Percentiles of different dimensions do not make one person: nobody is
// average in everything. A builder's own measures beat every table.
//
// # From stature alone
//
// Of scales each dimension with stature: its share of stature is the middle
// between the men's and the women's mean share. Half the difference between
// the two shares, and the scatter of the survey about its mean, are kept as a
// relative half-width. This holds for adults of 1450 to 2000 mm. Children have
// a longer trunk and shorter legs than the shares say (from memory: sitting
// height 54 % of stature at 1200 mm, 52.4 % grown), so for them the sitting
// figures are low by up to 3 %.
//
// # Standard bodies
//
// Standards are a small, a middling and a large woman and man, whose every dimension is that of 5, 50 or 95 in a hundred. They are for
// trying one dimension at a time.
//
// # Room
//
// Allowances stand in room.go, each with its source: 15 mm longer when lying
// and 25 mm for shoes are read in university tables of body sizes, the
// clearances are common practice.
package people
