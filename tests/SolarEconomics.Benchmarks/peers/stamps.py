"""pandas turns local text stamps into instants, the repeated hour by the order of the rows. Arguments: FILE of stamps, zone."""
import sys
import pandas
from peer import serve

path, zone = sys.argv[1:]
stamps = open(path, encoding="ascii").read().split("\n")[:-1]


def resolve():
    return pandas.to_datetime(stamps, format="%Y-%m-%d %H:%M").tz_localize(zone, ambiguous="infer")


serve(resolve, lambda instants: [len(instants), (instants.asi8 // 60_000_000_000).sum()])
