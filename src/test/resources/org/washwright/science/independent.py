"""Answers requests from standard input, one a line, by libraries that Washwright shares nothing with.

Each request is a name and numbers or words, each answer a number with seventeen figures on a line of its own.
"""
import math
import sys

import numpy
import pint
from iapws import IAPWS97, _iapws, iapws97
from scipy.integrate import quad, solve_ivp
from scipy.optimize import brentq, least_squares
from scipy.spatial import ConvexHull, HalfspaceIntersection

registry = pint.UnitRegistry()


def unit(amount, from_unit, to_unit):
    return registry.Quantity(float(amount), from_unit.replace("~", " ")).to(to_unit.replace("~", " ")).magnitude


def purge(start, supply, release, flow, volume, time):
    """Integrates the balance of a mixed room; knows no exponential."""
    slope = lambda t, c: [(release + flow * (supply - c[0])) / volume]
    return solve_ivp(slope, (0, time), [start], rtol=1e-10, atol=1e-14).y[0][-1]


def washburn(radius, tension, angle, viscosity, time):
    """Integrates Poiseuille's flow under the pressure of a meniscus; knows no root of time."""
    pressure = 2 * tension * math.cos(angle) / radius
    speed = lambda t, l: [radius**2 * pressure / (8 * viscosity * l[0])]
    start = 1e-7
    return solve_ivp(speed, (0, time), [start], method="LSODA", rtol=1e-10, atol=1e-13).y[0][-1]


def hole(density, depth, ambient):
    """Height of trapped air for which its pressure is that of the bath; knows no quotient."""
    balance = lambda air: ambient / air - ambient - density * 9.80665 * depth
    return 1 - brentq(balance, 1e-9, 1, xtol=1e-15)


def antoine_boiling(a, b, c, pressure):
    return brentq(lambda t: 10 ** (a - b / (t + c)) - pressure, -c + 20, 900, xtol=1e-11)


def owens_wendt(angle_water, angle_diiodomethane, part):
    """Solves the two equations by a general solver; draws no line."""
    liquids = [(21.8, 51.0, angle_water), (50.8, 0.0, angle_diiodomethane)]

    def faults(solid):
        return [
            (d + p) * (1 + math.cos(angle)) - 2 * (math.sqrt(d) * solid[0] + math.sqrt(p) * solid[1])
            for d, p, angle in liquids
        ]

    roots = least_squares(faults, [5.0, 5.0], xtol=1e-15, ftol=1e-15, gtol=1e-15).x
    return roots[int(part)] ** 2


def latent_heat(temperature):
    steam, liquid = (IAPWS97(T=temperature, x=x).h for x in (1, 0))
    return (steam - liquid) * 1e3


def saturated_air(temperature, pressure):
    water = iapws97._PSat_T(temperature) * 1e6
    return 0.62198 * water / (pressure - water)


def water_ratio(dilution, tanks):
    """The one positive root of the polynomial, by the eigenvalues of its companion matrix."""
    roots = numpy.roots([1.0] * int(tanks) + [1.0 - dilution])
    return max(root.real for root in roots if abs(root.imag) < 1e-9)


def last_rinse(ratio, tanks):
    """Solves the balances of counter-current tanks behind a bath of 1."""
    n = int(tanks)
    balance = (1 + ratio) * numpy.eye(n) - numpy.eye(n, k=-1) - ratio * numpy.eye(n, k=1)
    return numpy.linalg.solve(balance, numpy.eye(n)[0])[-1]


def integrated(slope, start, time):
    return solve_ivp(lambda t, c: [slope(c[0])], (0, time), [start], method="LSODA", rtol=1e-11, atol=1e-14).y[0][-1]


def rinse(before, start, drag_out, water, volume, time):
    return integrated(lambda c: (drag_out * before - (drag_out + water) * c) / volume, start, time)


def bath(volume, start, load, stream, share, time):
    return integrated(lambda c: (load - stream * share * c) / volume, start, time)


def bath_time(volume, limit, start, load, stream, share):
    return quad(lambda c: volume / (load - stream * share * c), start, limit, epsabs=0, epsrel=1e-12)[0]


def drip(end, start, rate, time):
    return end + integrated(lambda v: -rate * v, start, time)


def annuity(interest, years):
    """What pays back a loan of 1, by the debt at the end of its life."""

    def debt(paid):
        left = 1.0
        for _ in range(int(years)):
            left = left * (1 + interest) - paid
        return left

    return brentq(debt, 0, 2, xtol=1e-15)


def principal(*numbers):
    """The principal eigenvalue of a matrix written row by row, or a component of its eigenvector of sum 1."""
    part, *entries = numbers
    n = math.isqrt(len(entries))
    values, vectors = numpy.linalg.eig(numpy.array(entries).reshape(n, n))
    at = numpy.argmax(values.real)
    if part < 0:
        return values[at].real
    vector = vectors[:, at].real
    return vector[int(part)] / vector.sum()


def first_share(candidate, *scores):
    """Area of the weightings of three areas in which a candidate is first, over that of all: a polygon and its hull."""
    rows = numpy.array(scores).reshape(-1, 3)
    own = rows[int(candidate)]
    sides = [[-1.0, 0.0, 0.0], [0.0, -1.0, 0.0], [1.0, 1.0, -1.0]]
    for other in numpy.delete(rows, int(candidate), axis=0):
        d = other - own
        sides.append([d[0] - d[2], d[1] - d[2], d[2]])
    # A weighting well inside all sides; without one the candidate is never first.
    lattice = [(i / 200, j / 200) for i in range(1, 200) for j in range(1, 200 - i)]
    depth = lambda p: min(-(a * p[0] + b * p[1] + c) / math.hypot(a, b) for a, b, c in sides)
    inside = max(lattice, key=depth)
    if depth(inside) <= 0:
        return 0.0
    corners = HalfspaceIntersection(numpy.array(sides), numpy.array(inside)).intersections
    return ConvexHull(corners).volume / 0.5


def bore_pressure(viscosity, length, flow, diameter):
    """The pressure under which the integral over the parabola of velocities is the flow."""
    radius = diameter / 2

    def passed(pressure):
        speed = lambda r: pressure / (4 * viscosity * length) * (radius**2 - r**2)
        return quad(lambda r: speed(r) * 2 * math.pi * r, 0, radius, epsabs=0, epsrel=1e-12)[0]

    return flow / passed(1.0)


ANSWERS = {
    "latent-heat": latent_heat,
    "saturated-air": saturated_air,
    "water-ratio": water_ratio,
    "last-rinse": last_rinse,
    "rinse": rinse,
    "bath": bath,
    "bath-time": bath_time,
    "drip": drip,
    "annuity": annuity,
    "principal": principal,
    "first-share": first_share,
    "bore-pressure": bore_pressure,
    "vapour-pressure": lambda t: iapws97._PSat_T(t) * 1e6,
    "boiling-temperature": lambda p: iapws97._TSat_P(p / 1e6),
    "surface-tension": lambda t: _iapws._Tension(t),
    "density": lambda t: _iapws._Liquid(t)["rho"],
    "viscosity": lambda t: _iapws._Liquid(t)["mu"],
    "viscosity-of-steam-and-water": lambda t: _iapws._Viscosity(_iapws._Liquid(t)["rho"], t),
    "purge": purge,
    "washburn": washburn,
    "hole": hole,
    "antoine-boiling": antoine_boiling,
    "owens-wendt": owens_wendt,
}

for line in sys.stdin:
    name, *arguments = line.split()
    answer = unit(*arguments) if name == "unit" else ANSWERS[name](*map(float, arguments))
    print(f"{answer:.17g}")
