"""`import pandas` in a fresh process, and one sum."""
import pandas

print(pandas.Series([1.0, 2.0]).sum())
