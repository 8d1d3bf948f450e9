// Package conditioning answers: what do readings of sums say about the parts?
//
// Before reading, each part has a mean and a standard deviation and is independent of the others. A reading is a known
// combination of the parts plus noise of its own. Afterwards the parts have other means, smaller deviations, and are no
// longer independent. For normal errors this is exact; for others it is the best linear estimate.
//
//	S = H P Hᵀ + R            covariance of the readings
//	m' = m + P Hᵀ S⁻¹ (z − H m)
//	P' = P − P Hᵀ S⁻¹ H P     kept as P − Wᵀ W with W = L⁻¹ H P, S = L Lᵀ
//
// Parts that no reading touches keep mean and deviation to the last bit.
//
// Validity: noise must be positive, or the readings independent of each other, so that S can be factorised; otherwise
// Condition returns Singular. Sources: Anderson, An Introduction to Multivariate Statistical Analysis, 3rd edition,
// theorem 2.5.1 (from memory); checked against numpy.
package conditioning
