namespace SolarEconomics.Notebook.Tests;

public sealed class MalformedNotebookTests
{
    [Theory]
    [InlineData("", "nb.ipynb, line 1, place 1: found text that is not JSON")]
    [InlineData("{\n \"cells\": [\n", "nb.ipynb, line 3, place 1: found text that is not JSON")]
    [InlineData("[]", "nb.ipynb, the file: found a list, expected an object with the fields nbformat and cells.")]
    [InlineData("{\"cells\": []}", "nb.ipynb, nbformat: found nothing, expected the number 4.")]
    [InlineData("{\"nbformat\": 3, \"nbformat_minor\": 0, \"worksheets\": []}", "nb.ipynb: found notebook format 3, expected format 4.")]
    [InlineData("{\"nbformat\": 5, \"nbformat_minor\": 0, \"cells\": []}", "nb.ipynb: found notebook format 5, expected format 4.")]
    [InlineData("{\"nbformat\": 4, \"nbformat_minor\": 5, \"cells\": {}}", "nb.ipynb, cells: found an object, expected a list of cells.")]
    [InlineData("{\"nbformat\": 4, \"nbformat_minor\": 5, \"cells\": [{\"cell_type\": \"code\", \"source\": 7}]}", "nb.ipynb, cells[0].source: found the number 7, expected a text or a list of lines.")]
    [InlineData("{\"nbformat\": 4, \"nbformat_minor\": 5, \"cells\": [{\"cell_type\": \"code\", \"source\": [\"a\", null]}]}", "nb.ipynb, cells[0].source[1]: found nothing, expected a text.")]
    [InlineData("{\"nbformat\": 4, \"nbformat_minor\": 5, \"cells\": [{\"cell_type\": \"code\", \"source\": \"\\ud800\"}]}", "nb.ipynb: found a text with half of a character in it")]
    public void A_malformed_file_says_what_was_found_where_and_what_was_expected(string text, string expected) =>
        Assert.StartsWith(expected, Assert.Throws<NotebookFormatException>(() => NotebookDocument.Parse(text, "nb.ipynb")).Message, StringComparison.Ordinal);

    [Fact]
    public void A_missing_file_is_named() =>
        Assert.Equal("none.ipynb: found no such file, expected a notebook (.ipynb).", Assert.Throws<FileNotFoundException>(() => NotebookDocument.Load("none.ipynb")).Message);

    [Fact]
    public void A_file_that_is_not_utf_8_is_refused_and_not_repaired()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllBytes(folder.File("a.ipynb"), [.. "{\"cells\": [], \"x\": \""u8, 0xE9, .. "\"}"u8]);
        Assert.EndsWith("a.ipynb, byte 20: found bytes that are not UTF-8 text, expected a notebook (.ipynb). Nothing was changed in the file.",
            Assert.Throws<NotebookFormatException>(() => NotebookDocument.Load(folder.File("a.ipynb"))).Message, StringComparison.Ordinal);
    }
}
