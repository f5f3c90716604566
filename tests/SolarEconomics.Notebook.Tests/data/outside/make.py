"""Writes the notebooks of this folder with the reference library of the file format. Run with /usr/bin/python3 in this folder."""
import nbformat
from nbformat.v4 import new_code_cell, new_markdown_cell, new_notebook, new_output, new_raw_cell

print("nbformat", nbformat.__version__)

full = new_notebook(metadata={
    "kernelspec": {"display_name": "C#", "language": "C#", "name": "other"},
    "authors": [{"name": "Zoë O'Brien"}], "a_tool": {"z": 1, "a": [1.0, 1e-07, -0.0, 12345678901234567890], "nothing": None}})
full.cells = [
    new_markdown_cell("# Sun ☀ and 🌧\n\nLine with \\ and \"quotes\" and\ttab", id="words",
                      attachments={"dot.png": {"image/png": "iVBORw0KGgo="}}),
    new_code_cell("var x = 1;\nx + 1", id="code-1", execution_count=3, metadata={"tags": ["assumptions"], "collapsed": True, "own": {"deep": [[]], "empty": {}}},
                  outputs=[
                      new_output("stream", name="stdout", text="one\ntwo\n"),
                      new_output("stream", name="stderr", text="\u001b[31mred\u001b[0m\r\n"),
                      new_output("execute_result", data={"text/plain": "2", "text/html": "<b>2</b>\n<i>x</i>", "application/json": {"k": [1, 2.50, True]}},
                                 execution_count=3, metadata={"isolated": True}),
                      new_output("display_data", data={"image/png": "iVBORw0KGgo=\n"}, metadata={}),
                      new_output("error", ename="E", evalue="bad", traceback=["a", "b\n"])]),
    new_raw_cell("---\nraw: yes\n---", id="raw_1", metadata={"format": "text/restructuredtext"}),
    new_code_cell("", id="empty"),
]
nbformat.write(full, "full.ipynb")

empty = new_notebook()
nbformat.write(empty, "empty.ipynb")

older = nbformat.v4.nbbase.new_notebook()
older.nbformat_minor = 2
older.cells = [new_markdown_cell("# Old"), new_code_cell("1 + 1")]
for cell in older.cells:
    cell.pop("id", None)
nbformat.write(older, "older-4.2.ipynb", version=nbformat.NO_CONVERT)
