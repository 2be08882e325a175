"""Answers requests from standard input, one a line, by libraries that Washwright shares nothing with.

Each request is a name and numbers or words, each answer a number with seventeen figures on a line of its own.
"""
import math
import sys

import pint
from iapws import _iapws, iapws97
from scipy.integrate import solve_ivp
from scipy.optimize import brentq, least_squares

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


ANSWERS = {
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
