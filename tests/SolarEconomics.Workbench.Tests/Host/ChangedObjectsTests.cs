namespace SolarEconomics.Workbench.Tests;

/// <summary>Objects that are changed without their name being assigned: what reads them is out of date, or perhaps out of date where nobody can know.</summary>
public class ChangedObjectsTests
{
    private const string Box = "class Box { int n; public int Refill(int by) { n += by; return n; } public int Twice(int by) { var a = Refill(by); return a; } public int Doubled() => n * 2; }";

    [Theory]
    [InlineData("box.Refill(3)", true)]
    [InlineData("var now = box.Refill(3);", true)]
    [InlineData("var now = box.Twice(3);", true)]
    [InlineData("var now = box?.Refill(3);", true)]
    [InlineData("var now = 1 + box.Refill(3) * 2;", true)]
    [InlineData("int Now() => box.Refill(3); Now()", true)]
    [InlineData("{ var same = box; same.Refill(3); }", true)]
    [InlineData("foreach (var by in new[] { 1, 2 }) box.Refill(by);", true)]
    [InlineData("var now = box.Doubled();", null)]
    [InlineData("var now = box.ToString();", null)]
    public void A_method_of_the_readers_own_class_counts_as_it_is_written(string code, bool? isSure) =>
        Assert.Equal(Expected(isSure), Of(("a", Box), ("b", "var box = new Box();"), ("c", code), ("d", "box")).Reached("c"));

    [Theory]
    [InlineData("var n = meter.Settle();", false)]
    [InlineData("meter.Settle()", false)]
    [InlineData("meter.Settle();", true)]
    [InlineData("await meter.SettleAsync();", true)]
    [InlineData("meter?.Settle();", true)]
    [InlineData("meter.Level = 3;", true)]
    [InlineData("meter.Level++;", true)]
    [InlineData("var n = meter.Bridge();", null)]
    [InlineData("var n = meter.Where(x => x > 1).Sum();", null)]
    [InlineData("meter.Level", null)]
    public void What_nobody_can_know_is_perhaps_changed_and_what_the_library_answers_is_not(string code, bool? isSure) =>
        Assert.Equal(Expected(isSure), Of(("b", "var meter = Make();"), ("c", code), ("d", "meter")).Reached("c"));

    [Fact]
    public void An_extension_method_of_the_notebook_counts_as_it_is_written()
    {
        var steps = Of(("a", "static int Grow(this List<int> l) { l.Add(1); return l.Count; } static int Half(this List<int> l) => l.Count / 2;"), ("b", "var l = new List<int>();"),
            ("c", "var n = l.Grow();"), ("d", "var h = l.Half();"), ("e", "l"));
        Assert.Equal([("d", true), ("e", true)], steps.Reached("c"));
        Assert.Empty(steps.Reached("d"));
    }

    [Theory]
    [InlineData("prices[\"night\"] = 0.2;")]
    [InlineData("prices[\"night\"] += 0.2;")]
    [InlineData("prices.TryAdd(\"night\", 0.2)")]
    [InlineData("Change(ref prices);")]
    [InlineData("Make(1, out prices);")]
    [InlineData("(prices, _) = Make();")]
    public void An_element_a_reference_and_an_out_argument_are_changed(string code) =>
        Assert.Equal([("d", true)], Of(("b", "var prices = new Dictionary<string, double>();"), ("c", code), ("d", "prices")).Reached("c"));

    [Theory]
    [InlineData("var ok = double.TryParse(text, out var kwh);")]
    [InlineData("double.TryParse(text, out var kwh)")]
    [InlineData("if (!double.TryParse(text, out var kwh)) throw new FormatException();")]
    [InlineData("var ok = found is double kwh;")]
    public void A_name_declared_in_the_middle_of_an_expression_is_declared(string code) =>
        Assert.Equal([("d", true)], Of(("c", code), ("d", "kwh * 2")).Reached("c"));

    [Fact]
    public void A_name_declared_inside_a_function_of_its_own_stays_there() =>
        Assert.Empty(Of(("c", "var parse = (string s) => double.TryParse(s, out var kwh) ? kwh : 0;"), ("d", "kwh")).Reached("c"));

    [Theory]
    [InlineData("Action up = () => total++;", "up();")]
    [InlineData("Action up; up = () => total++;", "up.Invoke();")]
    [InlineData("void Up() { total++; }", "for (var i = 0; i < 3; i++) Up();")]
    public void A_function_that_captured_a_name_changes_it_where_it_is_called(string declared, string called)
    {
        var steps = Of(("a", "var total = 0;"), ("b", declared), ("c", called), ("d", "total"));
        Assert.Contains(("d", true), steps.Reached("c"));
        Assert.DoesNotContain("d", Of(("a", "var total = 0;"), ("b", declared), ("d", "total")).Below("b"));
    }

    [Fact]
    public void A_thing_inside_another_is_perhaps_changed_with_it()
    {
        var steps = Of(("a", "var l = new List<int>();"), ("b", "var h = new Holder { Inner = l };"), ("c", "h.Grow();"), ("d", "l.Count"), ("e", "h"));
        Assert.Equal([("d", false), ("e", true)], steps.Reached("c"));
    }

    [Fact]
    public void Changing_each_of_a_list_changes_the_list() =>
        Assert.Equal([("d", true)], Of(("a", Box), ("b", "var boxes = new List<Box>();"), ("c", "foreach (var one in boxes) one.Refill(1);"), ("d", "boxes.Count")).Reached("c"));

    [Fact]
    public void A_name_that_gets_another_value_leaves_the_other_names_of_the_old_one_alone() =>
        Assert.Empty(Of(("a", "var a = 1;"), ("b", "var b = a;"), ("c", "a = 2;"), ("d", "b")).Reached("c"));

    [Fact]
    public void Printing_joins_no_steps() =>
        Assert.Empty(Of(("a", "Console.WriteLine(1);"), ("b", "Console.WriteLine(2);")).Reached("a"));

    private static (string, bool)[] Expected(bool? isSure) => isSure is { } sure ? [("d", sure)] : [];

    private static Dependence Of(params (string Id, string Code)[] steps) => new([.. steps.Select(step => (step.Id, CodeNames.Of(step.Code)))]);
}
