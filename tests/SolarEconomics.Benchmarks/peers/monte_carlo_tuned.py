"""The same draws with the quickest of numpy's generators, a running product instead of powers, and buffers that stay. Arguments: draws, 1 for each year's own weather else 0."""
import sys
import numpy
from peer import serve

draws, weather = int(sys.argv[1]), sys.argv[2] == "1"
years, rate, spread, chunk = 25, 0.05, 0.06, 10_000
scores, power, ratio, total, work = (numpy.empty(chunk) for _ in range(5))
found = numpy.empty(draws)


def values():
    random = numpy.random.Generator(numpy.random.SFC64(7))
    for first in range(0, draws, chunk):
        count = min(chunk, draws - first)
        z, p, q, s, w = (buffer[:count] for buffer in (scores, power, ratio, total, work))
        random.standard_normal(out=z)
        numpy.multiply(z, 0.01, out=q)
        q += 1.02
        random.standard_normal(out=z)
        numpy.multiply(z, -0.001, out=w)
        w += 1 - 0.006
        q *= w
        q *= 1 / (1 + rate)
        if weather:
            p.fill(1)
            s.fill(0)
            for _ in range(years):
                random.standard_normal(out=z)
                z *= spread
                z += 1
                z *= p
                s += z
                p *= q
        else:
            numpy.power(q, years, out=p)
            numpy.subtract(1, p, out=s)
            numpy.subtract(1, q, out=w)
            s /= w
        random.standard_normal(out=z)
        z *= 60
        z += 900
        z *= 1 / (1 + rate)
        s *= z
        random.standard_normal(out=z)
        z *= 500
        z += 9000
        numpy.subtract(s, z, out=found[first:first + count])
    return found


serve(values, lambda npv: [npv.mean(), *numpy.percentile(npv, [10, 50, 90])])
