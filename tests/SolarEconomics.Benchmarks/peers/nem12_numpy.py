"""numpy reads NEM12 line by line: one call for all values of a day. Argument: FILE."""
import sys
import numpy
from peer import serve


def read():
    channels = []
    days = []
    with open(sys.argv[1], encoding="ascii") as file:
        for line in file:
            if line.startswith("300"):
                # 300,yyyymmdd, 288 values, then the quality flag.
                days.append(numpy.fromstring(line[13:line.index(",A", 13)], sep=","))
            elif line.startswith("200"):
                days = []
                channels.append(days)
    return [numpy.concatenate(days) for days in channels]


serve(read, lambda channels: [value for kwh in channels for value in (len(kwh), kwh.sum())])
