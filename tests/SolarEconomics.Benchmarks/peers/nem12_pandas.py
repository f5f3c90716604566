"""pandas reads NEM12 as one wide table, then melts it to one row per interval with its time. Argument: FILE."""
import sys
import pandas
from peer import serve

INTERVALS = 288
COLUMNS = ["record", "day", *range(INTERVALS), "quality", "reason", "note", "updated", "loaded"]


def read():
    wide = pandas.read_csv(sys.argv[1], names=COLUMNS, dtype={"day": str}, low_memory=False)
    wide["channel"] = (wide["record"] == 200).cumsum()
    wide = wide[wide["record"] == 300]
    long = wide.melt(id_vars=["channel", "day"], value_vars=list(range(INTERVALS)), var_name="interval", value_name="kwh")
    long["kwh"] = long["kwh"].astype(float)
    long["start"] = pandas.to_datetime(long["day"], format="%Y%m%d") + pandas.to_timedelta(long["interval"].astype("int64") * 5, unit="min")
    return long.sort_values(["channel", "start"])


def checksum(long):
    by_channel = long.groupby("channel")["kwh"]
    return [value for pair in zip(by_channel.count(), by_channel.sum()) for value in pair]


serve(read, checksum)
