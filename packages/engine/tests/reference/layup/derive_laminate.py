"""Laminate stiffness worked a second and a third way, apart from the engine: plies turned by strain and stress
transformation matrices, and by the five invariants. Run: python3 derive_laminate.py (needs numpy)."""
import numpy as np

def q_of(e1, e2, nu, g):
    s = np.array([[1 / e1, -nu / e1, 0], [-nu / e1, 1 / e2, 0], [0, 0, 1 / g]])
    return np.linalg.inv(s)

def by_matrices(q, deg):
    c, s = np.cos(np.radians(deg)), np.sin(np.radians(deg))
    t = np.array([[c * c, s * s, 2 * s * c], [s * s, c * c, -2 * s * c], [-s * c, s * c, c * c - s * s]])
    r = np.diag([1, 1, 2])
    return np.linalg.inv(t) @ q @ r @ t @ np.linalg.inv(r)

def by_invariants(q, deg):
    a = np.radians(deg)
    q11, q12, q22, q66 = q[0, 0], q[0, 1], q[1, 1], q[2, 2]
    u1 = (3 * q11 + 3 * q22 + 2 * q12 + 4 * q66) / 8
    u2 = (q11 - q22) / 2
    u3 = (q11 + q22 - 2 * q12 - 4 * q66) / 8
    u4 = (q11 + q22 + 6 * q12 - 4 * q66) / 8
    u5 = (q11 + q22 - 2 * q12 + 4 * q66) / 8
    c2, c4, s2, s4 = np.cos(2 * a), np.cos(4 * a), np.sin(2 * a), np.sin(4 * a)
    m11, m22 = u1 + u2 * c2 + u3 * c4, u1 - u2 * c2 + u3 * c4
    m12, m66 = u4 - u3 * c4, u5 - u3 * c4
    m16, m26 = u2 * s2 / 2 + u3 * s4, u2 * s2 / 2 - u3 * s4
    return np.array([[m11, m12, m16], [m12, m22, m26], [m16, m26, m66]])

def abd(turn, q, plies):
    h = sum(t for _, t in plies)
    z = -h / 2
    a, b, d = np.zeros((3, 3)), np.zeros((3, 3)), np.zeros((3, 3))
    for deg, t in plies:
        m = turn(q, deg)
        a += m * t
        b += m * ((z + t) ** 2 - z**2) / 2
        d += m * ((z + t) ** 3 - z**3) / 3
        z += t
    return a, b, d

for name, props, plies in [
    ("Kaw 4.2", (181e9, 10.3e9, 0.28, 7.17e9), [(0, 5e-3), (30, 5e-3), (-45, 5e-3)]),
    ("V9.3", (130e9, 4.65e9, 0.35, 4.65e9), [(x, 0.13e-3) for x in (0, 45, -45, 90, 90, -45, 45, 0)]),
]:
    q = q_of(*props)
    for turn in (by_matrices, by_invariants):
        for letter, m in zip("ABD", abd(turn, q, plies)):
            print(name, turn.__name__, letter, np.array2string(m, precision=4))
A = abd(by_matrices, q_of(181e9, 10.3e9, 0.28, 7.17e9), [(0, 5e-3), (30, 5e-3), (-45, 5e-3)])
k = np.block([[A[0], A[1]], [A[1], A[2]]])
print("Kaw 4.3, 1000 N/m both ways:", np.linalg.solve(k, np.array([1000, 1000, 0, 0, 0, 0])))
