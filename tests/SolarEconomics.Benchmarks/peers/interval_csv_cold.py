"""The same read in a fresh process, start and import included. Argument: FILE."""
import sys
import pandas

table = pandas.read_csv(sys.argv[1], parse_dates=["start"], date_parser=lambda text: pandas.to_datetime(text, format="%Y-%m-%d %H:%M"))
print(len(table), *(repr(float(total)) for total in table.iloc[:, 1:].sum()))
