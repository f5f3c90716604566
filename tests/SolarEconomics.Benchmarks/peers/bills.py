"""Time-of-use bills of many tariffs over calendar months. Arguments: FOLDER of the made input, and the way:
`groupby`, `indexing`, `dense` (one matrix product per month) or `cells` (kWh folded once by month, kind of day and half hour)."""
import os
import sys
import numpy
import pandas
from peer import serve

folder, way = sys.argv[1:]


def column(name, kind):
    return numpy.fromfile(os.path.join(folder, name), dtype=kind)


kwh = column("kwh.f64", numpy.float64)
month = column("month.i32", numpy.int32)
cell = column("cell.i32", numpy.int32)
bands = column("bands.u8", numpy.uint8).reshape(-1, len(kwh))
rates = column("rates.f64", numpy.float64).reshape(len(bands), -1)
cell_bands = column("cellbands.u8", numpy.uint8).reshape(len(bands), -1) if way == "cells" else None
months = month.max() + 1
starts = numpy.searchsorted(month, numpy.arange(months))
ends = numpy.append(starts[1:], len(kwh))

# Laid out before the clock starts, as our plans are compiled before it.
tables = [pandas.DataFrame({"month": month, "band": band, "kwh": kwh}) for band in bands] if way == "groupby" else None
dense = numpy.stack([rate[band] for rate, band in zip(rates, bands)]) if way == "dense" else None
if way == "cells":
    cells = cell_bands.shape[1] // months
    cell_rates = numpy.stack([rate[band] for rate, band in zip(rates, cell_bands)]).reshape(len(rates), months, cells)


def groupby():
    bills = []
    for table, rate in zip(tables, rates):
        sums = table.groupby(["month", "band"])["kwh"].sum()
        priced = sums * rate[sums.index.get_level_values("band")]
        bills.append(priced.groupby(level="month").sum().to_numpy())
    return numpy.stack(bills)


def indexing():
    return numpy.stack([numpy.add.reduceat(rate[band] * kwh, starts) for rate, band in zip(rates, bands)])


def by_matrix():
    return numpy.stack([dense[:, start:end] @ kwh[start:end] for start, end in zip(starts, ends)], axis=1)


def by_cells():
    folded = numpy.bincount(month * cells + cell, weights=kwh, minlength=months * cells).reshape(months, cells)
    return numpy.einsum("tmc,mc->tm", cell_rates, folded)


def checksum(bills):
    totals = bills.sum(axis=1)
    return [bills.sum(), (totals * numpy.arange(1, len(totals) + 1)).sum()]


serve({"groupby": groupby, "indexing": indexing, "dense": by_matrix, "cells": by_cells}[way], checksum)
