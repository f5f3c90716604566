"""Net present values of a yearly plan, 10,000 draws at a time: one random number table per chunk. Arguments: draws, 1 for each year's own weather else 0."""
import sys
import numpy
from peer import serve

draws, weather = int(sys.argv[1]), sys.argv[2] == "1"
years, rate, spread = 25, 0.05, 0.06
ages = numpy.arange(years)
discount = 1.05 ** -(ages + 1.0)


def values():
    random = numpy.random.default_rng(7)
    found = []
    for first in range(0, draws, 10_000):
        count = min(10_000, draws - first)
        investment = random.normal(9000, 500, count)
        value = random.normal(900, 60, count)
        growth = random.normal(0.02, 0.01, count)
        ageing = random.normal(0.006, 0.001, count)
        yearly = value[:, None] * ((1 + growth) * (1 - ageing))[:, None] ** ages
        if weather:
            yearly *= 1 + spread * random.standard_normal((count, years))
        found.append(yearly @ discount - investment)
    return numpy.concatenate(found)


serve(values, lambda npv: [npv.mean(), *numpy.percentile(npv, [10, 50, 90])])
