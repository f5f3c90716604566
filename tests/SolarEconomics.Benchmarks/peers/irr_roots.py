"""Internal rates one at a time by the roots of the polynomial. Arguments: FILE of flows, values per flow."""
import sys
import numpy
from peer import serve

flows = numpy.fromfile(sys.argv[1], dtype=numpy.float64).reshape(-1, int(sys.argv[2]))


def rate(flow):
    roots = numpy.roots(flow[::-1])
    real = roots[(numpy.abs(roots.imag) < 1e-9) & (roots.real > 0)].real
    return 1 / real[0] - 1


serve(lambda: [rate(flow) for flow in flows], lambda rates: [len(rates), sum(rates)])
