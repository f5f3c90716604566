"""Internal rates one at a time by Brent's method. Arguments: FILE of flows, values per flow."""
import sys
import numpy
from scipy.optimize import brentq
from peer import serve

flows = numpy.fromfile(sys.argv[1], dtype=numpy.float64).reshape(-1, int(sys.argv[2]))
years = numpy.arange(flows.shape[1])


def rate(flow):
    return brentq(lambda r: (flow * (1 + r) ** -years).sum(), -0.5, 1.0, xtol=1e-14)


serve(lambda: [rate(flow) for flow in flows], lambda rates: [len(rates), sum(rates)])
