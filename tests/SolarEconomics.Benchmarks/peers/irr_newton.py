"""Internal rates of all flows at once: Newton on v = 1/(1+r), Horner's rule over columns that lie together. Arguments: FILE of flows, values per flow."""
import sys
import numpy
from peer import serve

flows = numpy.fromfile(sys.argv[1], dtype=numpy.float64).reshape(-1, int(sys.argv[2]))
columns = numpy.ascontiguousarray(flows.T)


def rates():
    v = numpy.full(columns.shape[1], 1 / 1.1)
    for _ in range(50):
        value = columns[-1].copy()
        slope = numpy.zeros_like(v)
        for column in columns[-2::-1]:
            slope *= v
            slope += value
            value *= v
            value += column
        step = value / slope
        v -= step
        if numpy.abs(step).max() < 1e-12:
            break
    return 1 / v - 1


serve(rates, lambda found: [len(found), found.sum()])
