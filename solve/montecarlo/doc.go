// Package montecarlo answers: how large is a sum whose parts are not known exactly, and how sure is that?
//
// A sum is a list of terms, each with a distribution. Terms without a key are independent. Terms of one key share one
// error: they are drawn together, each as its own mean plus its own deviation times one common standardised draw. Where
// terms of one key have unlike shapes, the shape of the term with the greatest deviation (the first of equals) serves all.
// So deviations add within a key, and variances add between keys.
//
// Sample draws the sum n times from a seed and gives quantiles with their standard error; Approximate gives the normal
// distribution with the same mean and variance, which needs no draws and is what the central limit theorem promises for
// many terms of like size.
//
// Validity: the normal approximation is poor where one skewed term outweighs the rest; the two are there to be compared.
// The quantile error is the distribution-free one of order statistics and asks for n·p·(1−p) of at least about 20.
//
// Sources: PERT: Malcolm, Roseboom, Clark and Fazar, Operations Research 7 (1959) 646-669, as a beta distribution of
// shape parameter 4. Standard error of a sample quantile: David and Nagaraja, Order Statistics, 3rd edition, section
// 7.1 (from memory). Generator: PCG, O'Neill 2014, as in math/rand/v2.
package montecarlo
