namespace SolarEconomics.Tests.PlantRoom;

public class PlantMessageTests
{
    [Fact]
    public void A_missing_file_says_where_it_was_looked_for()
    {
        var e = Assert.Throws<RecordException>(() => Plant.Load("no-such/plant.json"));
        Assert.Equal($"no-such/plant.json: found no such file, expected a plant file. Looked in {Path.GetFullPath("no-such/plant.json")}.", e.Message);
    }

    [Theory]
    [InlineData("", ": found an empty file, expected a plant file.")]
    [InlineData("{ \"version\": 1\n  \"devices\": [] }",
        ", line 2, column 3: found text that is not JSON, expected a plant file. Often a comma, a bracket or a quotation mark is missing just before that place.")]
    [InlineData("{ \"version\": 2, \"panels\": [] }",
        ": found version 2, expected 1: the file was written by a newer version of this library. Update the library.")]
    [InlineData("{ \"version\": 1 }", ", line 1, column 1: found no field \"devices\", expected it: a list of at least one device.")]
    [InlineData("[]", ", line 1, column 1: found [], expected an object with version and devices.")]
    public void A_file_that_is_no_plant_file_says_so(string text, string message) => Says(text, message);

    [Fact]
    public void A_misspelt_field_is_named_with_the_nearest_fields() => Says(
        Plant1("\"standbyWatt\": 8"),
        ", line 4, column 5: found field \"standbyWatt\", expected one of the known fields, such as standbyW, stages, name.");

    [Fact]
    public void A_misspelt_measurement_point_is_named_with_the_nearest() => Says(
        "{ \"version\": 1, \"devices\": [\n  { \"name\": \"roof\", \"point\": \"inverterAC\" } ] }",
        ", line 2, column 21: found \"inverterAC\", expected one of inverterAcOut, meter, batteryIn, moduleDc, batteryOut, loadBoard, unknown, controllerDcOut.");

    [Theory]
    [InlineData("\"ratedKwp\": -1", "found -1, expected rated power of the modules behind it today, in kWp, such as 3.78; 0 without modules.")]
    [InlineData("\"toAcLow\": 93", "found 93, expected lowest efficiency from its point to AC as a fraction above 0, up to 1; 93 % is 0.93.")]
    [InlineData("\"inService\": \"1 March\"", "found \"1 March\", expected a day such as \"2022-03-01\".")]
    [InlineData("\"inService\": \"2022-02-30\"", "found \"2022-02-30\", expected a day that exists, such as \"2022-03-01\".")]
    [InlineData("\"toAcHigh\": 0.9, \"toAcLow\": 0.95",
        "found 0.95 above toAcHigh 0.9, expected the lower efficiency in toAcLow and the higher in toAcHigh; where only one is known, write it in both.", 22)]
    [InlineData("\"outOfService\": \"2022-01-01\", \"inService\": \"2022-03-01\"",
        "found 2022-01-01, not after inService 2022-03-01, expected the first day on which the device no longer worked.")]
    [InlineData("\"ratedKwp\": 3, \"stages\": [ { \"from\": \"2022-01-01\", \"ratedKwp\": 4 } ]",
        "found 3 kWp beside 4 kWp in the last stage, expected the rated power of the last stage in ratedKwp too.")]
    [InlineData("\"replaces\": \"rof\"", "found \"rof\", expected the name of another device of this file, such as shed.")]
    public void A_wrong_value_is_found_where_it_stands(string field, string message, int column = 5) =>
        Says(Plant1(field), FormattableString.Invariant($", line 4, column {column}: {message}"));

    [Fact]
    public void A_name_given_twice_is_found() => Says(
        "{ \"version\": 1, \"devices\": [\n  { \"name\": \"roof\", \"point\": \"meter\" },\n  { \"name\": \"roof\", \"point\": \"meter\" } ] }",
        ", line 3, column 5: found \"roof\" a second time, expected a name of its own for each device.");

    [Fact]
    public void Devices_that_replace_one_another_in_a_circle_are_found()
    {
        using var file = new TextFile("{ \"version\": 1, \"devices\": [\n  { \"name\": \"a\", \"point\": \"meter\", \"replaces\": \"b\" },\n  { \"name\": \"b\", \"point\": \"meter\", \"replaces\": \"a\" } ] }");
        var e = Assert.Throws<RecordException>(() => Plant.Load(file.Path));
        Assert.Equal([2, 3], e.Problems.Select(p => p.Line));
        Assert.Equal("\"b\", from which the line of replaced devices runs in a circle", e.Problems[0].Found);
    }

    [Fact]
    public void All_mistakes_are_listed_at_once_in_file_order()
    {
        using var file = new TextFile("{ \"version\": 1, \"devices\": [\n  { \"name\": \"\", \"point\": \"meter\" },\n  { \"name\": \"roof\" } ] }");
        var e = Assert.Throws<RecordException>(() => Plant.Load(file.Path));
        Assert.Equal([2, 3], e.Problems.Select(p => p.Line));
        Assert.StartsWith($"{file.Path}: found 2 mistakes:", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Any_cut_of_the_demo_s_file_is_refused_in_words_and_never_crashes()
    {
        var text = Demo.DemoScenario.Text("plant.json");
        for (var length = 0; length < text.Length - 3; length += 7)
        {
            using var file = new TextFile(text[..length]);
            Assert.Contains("expected", Assert.Throws<RecordException>(() => Plant.Load(file.Path)).Message, StringComparison.Ordinal);
        }
    }

    /// <summary>A plant whose first device has a field on line 4, from column 5.</summary>
    private static string Plant1(string field) =>
        "{ \"version\": 1, \"devices\": [\n  { \"name\": \"roof\", \"point\": \"inverterAcOut\",\n\n    " + field + " },\n  { \"name\": \"shed\", \"point\": \"meter\" } ] }";

    private static void Says(string text, string message)
    {
        using var file = new TextFile(text);
        Assert.Equal(file.Path + message, Assert.Throws<RecordException>(() => Plant.Load(file.Path)).Message);
    }
}
