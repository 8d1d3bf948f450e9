# A wall between surroundings whose outer temperature swings as a sine of a day about its mean and whose inner one is
# steady: amplitude and lag of the inner surface, by the complex transfer matrices of ISO 13786 (the product of
# one matrix for each layer, exact for every frequency). Also a half-space under a swinging surface.
import cmath, json, math

def layer(thickness, conductivity, density, capacity, omega):
    k = cmath.sqrt(1j * omega * density * capacity / conductivity)
    x = k * thickness
    return [[cmath.cosh(x), cmath.sinh(x) / (conductivity * k)], [conductivity * k * cmath.sinh(x), cmath.cosh(x)]]

def times(a, b):
    return [[sum(a[i][k] * b[k][j] for k in range(2)) for j in range(2)] for i in range(2)]

def film(r):
    return [[1, r], [0, 1]]

def inner(layers, outer, inner_r, hours):
    omega = 2 * math.pi / (hours * 3600)
    m = film(outer)
    for l in layers:
        m = times(m, layer(*l, omega))
    m = times(m, film(inner_r))
    # outer temperature 1, inner temperature 0: (1, q_outer) = m (0, q_inner)
    q = 1 / m[0][1]
    surface = q * inner_r
    return {"amplitude": abs(surface), "lag": (-cmath.phase(surface)) % (2 * math.pi) / omega / 3600}

light = [(0.001, 50, 7800, 450), (0.040, 0.035, 35, 1450), (0.004, 0.17, 680, 1600)]
heavy = [(0.020, 0.13, 500, 1600), (0.100, 0.7, 1800, 1000), (0.020, 0.17, 680, 1600)]
alpha, depth = 0.13 / (500 * 1600), 0.020
omega = 2 * math.pi / 86400
reach = math.sqrt(2 * alpha / omega)
print(json.dumps({
    "light": inner(light, 0.04, 0.13, 24),
    "lightHour": inner(light, 0.04, 0.13, 1),
    "heavy": inner(heavy, 0.04, 0.13, 24),
    "half": {"amplitude": math.exp(-depth / reach), "lag": depth / reach / omega / 3600},
}, indent=1))
