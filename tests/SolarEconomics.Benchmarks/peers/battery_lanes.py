"""A year of many batteries side by side, one row of numbers per hour. Arguments: FOLDER, number of cases, plain or tuned (every operation into memory kept)."""
import sys
import numpy
from peer import serve

folder, cases, way = sys.argv[1], int(sys.argv[2]), sys.argv[3]


def read(name):
    return numpy.fromfile(f"{folder}/{name}.f64", dtype=numpy.float64)


net_of, buy, sell = read("sun") - read("use"), read("buy"), read("sell")
usable, power = read("usable")[:cases], read("power")[:cases]
into = out_of = 0.95


def plain():
    stored, cost, bought = numpy.zeros(cases), numpy.zeros(cases), numpy.zeros(cases)
    for net, price, paid in zip(net_of, buy, sell):
        want = numpy.clip(net, -power, power)
        after = numpy.clip(stored + numpy.where(want > 0, want * into, want / out_of), 0, usable)
        change = after - stored
        grid = net - numpy.where(change > 0, change / into, change * out_of)
        cost += numpy.where(grid < 0, -grid * price, -grid * paid)
        bought += numpy.maximum(-grid, 0)
        stored = after
    return cost, bought, stored


def tuned():
    # What only the net decides is worked out once for each hour; every operation writes into memory that stays.
    stored, cost, bought = numpy.zeros(cases), numpy.zeros(cases), numpy.zeros(cases)
    up_most, down_most = power * into, power / out_of
    after, change, grid = (numpy.empty(cases) for _ in range(3))
    minimum, maximum, add, subtract, multiply = numpy.minimum, numpy.maximum, numpy.add, numpy.subtract, numpy.multiply
    for net, price, paid in zip(net_of.tolist(), buy.tolist(), sell.tolist()):
        if net > 0:
            minimum(net * into, up_most, out=after)
            add(stored, after, out=after)
            minimum(after, usable, out=after)
            subtract(after, stored, out=change)
            multiply(change, 1 / into, out=grid)
            subtract(net, grid, out=grid)
            multiply(grid, paid, out=grid)
            subtract(cost, grid, out=cost)
        else:
            minimum(-net / out_of, down_most, out=after)
            subtract(stored, after, out=after)
            maximum(after, 0, out=after)
            subtract(after, stored, out=change)
            multiply(change, out_of, out=grid)
            subtract(grid, net, out=grid)
            add(bought, grid, out=bought)
            multiply(grid, price, out=grid)
            add(cost, grid, out=cost)
        stored, after = after, stored
    return cost, bought, stored


serve(plain if way == "plain" else tuned, lambda found: [column.sum() for column in found])
