# Five independent normal parts, three readings with noise: the posterior by the textbook formula, and once more by
# the information form (inverse covariances added), which must agree.
import json
import numpy as np

m = np.array([31.0, 6.5, 13.0, 50.0, 155.0])
P = np.diag(np.array([6.0, 0.5, 1.0, 0.0, 20.0]) ** 2)
H = np.array([[1, 1, 0, 1, 1], [0.4, 0.2, 1.1, 0, 0.5], [0, 0, 1, 0, 0]], dtype=float)
R = np.diag([33.3, 33.3, 0.01])
z = np.array([270.0, 110.0, 12.4])

S = H @ P @ H.T + R
K = P @ H.T @ np.linalg.inv(S)
mean = m + K @ (z - H @ m)
cov = P - K @ H @ P

keep = [0, 1, 2, 4]  # the fourth part is exact: leave it out of the inverse
Pk, Hk = P[np.ix_(keep, keep)], H[:, keep]
info = np.linalg.inv(np.linalg.inv(Pk) + Hk.T @ np.linalg.inv(R) @ Hk)
assert np.allclose(info, cov[np.ix_(keep, keep)], rtol=1e-9)
print(json.dumps({"mean": mean.tolist(), "cov": cov.tolist()}))
