using System.Text.Json.Nodes;

namespace SolarEconomics.Notebook.Tests;

public sealed class NotebookDocumentTests
{
    [Fact]
    public void Where_answers_are_left_out_working_out_again_changes_no_letter_of_the_file_and_the_answers_stay_in_hand()
    {
        using var folder = new TemporaryFolder();
        var document = Outside.Load("full.ipynb");
        var withAnswers = document.State();
        document.LeavesAnswersOut = true;
        document.Save(folder.File("a.ipynb"));
        var step = document.Steps.First(one => one.Kind == StepKind.Code);
        document.AddOutput(step.Id, new JsonObject { ["output_type"] = "stream", ["name"] = "stdout", ["text"] = "another answer" });
        document.SetRunNumber(step.Id, 77);
        document.Save(folder.File("b.ipynb"));
        var saved = File.ReadAllText(folder.File("a.ipynb"));
        Assert.Equal(saved, File.ReadAllText(folder.File("b.ipynb")));
        Assert.NotEmpty(step.Outputs);
        var reopened = NotebookDocument.Parse(saved);
        Assert.True(reopened.LeavesAnswersOut);
        Assert.All(reopened.Steps, one => Assert.Empty(one.Outputs));
        Assert.Equal(withAnswers.Steps.Select(one => one.Id), reopened.Steps.Select(one => one.Id));
        reopened.LeavesAnswersOut = false;
        Assert.DoesNotContain("left out", reopened.ToJson(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("full.ipynb")]
    [InlineData("empty.ipynb")]
    public void A_notebook_of_another_program_is_written_back_letter_for_letter(string name) =>
        Assert.Equal(Outside.Text(name), Outside.Load(name).ToJson());

    [Fact]
    public void Steps_of_another_program_are_read()
    {
        var steps = Outside.Load("full.ipynb").Steps;
        Assert.Equal([StepKind.Text, StepKind.Code, StepKind.Other, StepKind.Code], steps.Select(s => s.Kind));
        Assert.Equal(["words", "code-1", "raw_1", "empty"], steps.Select(s => s.Id));
        Assert.Equal("Sun ☀ and 🌧", steps[0].Heading);
        Assert.Equal("var x = 1;\nx + 1", steps[1].Source);
        Assert.Equal(["assumptions"], steps[1].Tags);
        Assert.Equal(5, steps[1].Outputs.Count);
        Assert.Equal(3, steps[1].RunNumber);
    }

    [Fact]
    public void A_cell_kind_nobody_knows_and_unknown_fields_survive_an_edit_beside_them()
    {
        const string Text = """
            {"later": {"b": 1, "a": 2}, "cells": [{"cell_type": "diagram", "id": "d", "metadata": {}, "shapes": [1e3], "source": "x"},
            {"cell_type": "code", "id": "c", "metadata": {}, "execution_count": null, "outputs": [], "source": "1"}], "metadata": {}, "nbformat": 4, "nbformat_minor": 5}
            """;
        var document = NotebookDocument.Parse(Text);
        document.SetSource("c", "2");
        var written = JsonNode.Parse(document.ToJson())!;
        Assert.Equal("""{"b":1,"a":2}""", written["later"]!.ToJsonString());
        Assert.Equal("""{"cell_type":"diagram","id":"d","metadata":{},"shapes":[1e3],"source":"x"}""", written["cells"]![0]!.ToJsonString());
        Assert.Equal(["later", "cells", "metadata", "nbformat", "nbformat_minor"], written.AsObject().Select(f => f.Key));
    }

    [Fact]
    public void A_file_of_an_older_minor_version_gets_the_same_names_each_time()
    {
        var first = Outside.Load("older-4.2.ipynb");
        Assert.Equal(first.ToJson(), Outside.Load("older-4.2.ipynb").ToJson());
        Assert.All(first.Steps, s => Assert.Matches("^[0-9a-f]{8}$", s.Id));
        Assert.Equal(5, (int)JsonNode.Parse(first.ToJson())!["nbformat_minor"]!);
    }

    [Fact]
    public void Two_steps_of_one_name_are_told_apart()
    {
        var cell = """{"cell_type": "code", "id": "a", "metadata": {}, "execution_count": null, "outputs": [], "source": "1"}""";
        var document = NotebookDocument.Parse($$"""{"cells": [{{cell}}, {{cell}}], "metadata": {}, "nbformat": 4, "nbformat_minor": 5}""");
        Assert.Equal("a", document.Steps[0].Id);
        Assert.NotEqual("a", document.Steps[1].Id);
    }

    [Fact]
    public void An_edit_of_one_line_changes_one_line_of_the_file()
    {
        var document = Outside.Load("full.ipynb");
        var before = document.ToJson().Split('\n');
        document.SetSource("code-1", "var x = 2;\nx + 1");
        var after = document.ToJson().Split('\n');
        Assert.Equal(before.Length, after.Length);
        Assert.Equal(1, before.Zip(after).Count(p => p.First != p.Second));
    }

    [Fact]
    public void Steps_are_put_in_moved_turned_and_taken_out()
    {
        var document = NotebookDocument.New();
        var words = document.Insert(0, StepKind.Text, "# One");
        var code = document.Insert(1, StepKind.Code, "1 + 1");
        document.Move(code.Id, 0);
        Assert.Equal([code.Id, words.Id], document.Steps.Select(s => s.Id));
        document.AddOutput(code.Id, Outputs.Printed("stdout", "x"));
        document.SetKind(code.Id, StepKind.Text);
        Assert.Empty(code.Outputs);
        document.Delete(words.Id);
        Assert.Equal(document.ToJson(), NotebookDocument.Parse(document.ToJson()).ToJson());
        Assert.Equal("1 + 1", Assert.Single(document.Steps).Source);
        Assert.Throws<ArgumentException>(() => document.Delete(words.Id));
    }

    [Fact]
    public void Printed_text_in_pieces_is_one_output()
    {
        var document = NotebookDocument.New();
        var id = document.Insert(0, StepKind.Code, "").Id;
        document.AddOutput(id, Outputs.Printed("stdout", "a\nb"));
        document.AddOutput(id, Outputs.Printed("stdout", "c\n"));
        document.AddOutput(id, Outputs.Printed("stderr", "d"));
        Assert.Equal("""["a\n","bc\n"]""", document.Steps[0].Outputs[0]["text"]!.ToJsonString());
        Assert.Equal(2, document.Steps[0].Outputs.Count);
    }

    [Fact]
    public void An_output_is_saved_with_letters_as_themselves_and_keys_in_order()
    {
        var document = NotebookDocument.New();
        var id = document.Insert(0, StepKind.Code, "").Id;
        document.AddOutput(id, JsonNode.Parse("{\"z\": \"\\u003Cb\\u003E \\u00e9 \\uD83C\\uDF27\", \"a\": [1.50, null]}")!.AsObject());
        Assert.Contains("     \"a\": [\n      1.50,\n      null\n     ],\n     \"z\": \"<b> é 🌧\"\n", document.ToJson(), StringComparison.Ordinal);
    }

    [Fact]
    public void Culture_and_library_version_stand_in_the_file()
    {
        var document = NotebookDocument.New();
        Assert.Equal("en-IE", document.Culture);
        document.Culture = "de-DE";
        using var folder = new TemporaryFolder();
        document.Save(folder.File("a.ipynb"));
        var own = JsonNode.Parse(File.ReadAllText(folder.File("a.ipynb")))!["metadata"]!["solareconomics"]!;
        Assert.Equal("de-DE", (string?)own["culture"]);
        Assert.Equal(typeof(Finding).Assembly.GetName().Version!.ToString(3), (string?)own["library"]);
    }
}
