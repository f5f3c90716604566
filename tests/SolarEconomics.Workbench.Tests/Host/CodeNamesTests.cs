namespace SolarEconomics.Workbench.Tests;

/// <summary>What a step defines and uses, read from its text.</summary>
public class CodeNamesTests
{
    [Theory]
    [InlineData("var a = b + c;", "a", "b c")]
    [InlineData("var a = 1; var d = a;", "a d", "")]
    [InlineData("worth.Bridge()", "", "worth")]
    [InlineData("list.Add(x);", "list", "list x")]
    [InlineData("total += x;", "total", "total x")]
    [InlineData("var (low, high) = Range(x);", "low high", "Range x")]
    [InlineData("double F(double x) => x * k;", "F", "k")]
    [InlineData("var ys = xs.Select(x => x + n).ToList();", "ys", "xs n")]
    [InlineData("foreach (var r in rows) sum += r.Value;", "sum", "rows sum")]
    [InlineData("new Assumptions { Years = years }", "", "Assumptions years")]
    [InlineData("f(label: y)", "", "f y")]
    [InlineData("record Point(int X);", "Point", "")]
    [InlineData("// a = b\n\"a = b\"", "", "")]
    public void Names_defined_and_used(string code, string defines, string uses)
    {
        var names = CodeNames.Of(code);
        Assert.Equal(Words(defines), names.Defines.Order(StringComparer.Ordinal));
        Assert.Equal(Words(uses), names.Uses.Where(name => name != "var").Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_diamond_reaches_both_sides_and_the_end_once() =>
        Assert.Equal(["b", "c", "d"], Of(("a", "var a = 1;"), ("b", "var b = a;"), ("c", "var c = a;"), ("d", "b + c"), ("e", "2")).Below("a"));

    [Fact]
    public void A_name_declared_anew_shadows_the_one_above() =>
        Assert.Equal(["b"], Of(("a", "var x = 1;"), ("b", "x"), ("c", "var x = 2;"), ("d", "x")).Below("a"));

    [Fact]
    public void A_list_changed_through_a_method_reaches_its_later_readers() =>
        Assert.Equal(["c"], Of(("a", "var l = new List<int>();"), ("b", "l.Add(1);"), ("c", "l.Count")).Below("b"));

    [Fact]
    public void What_a_step_needs_from_above_comes_in_reading_order() =>
        Assert.Equal(["a", "b"], Of(("a", "var a = 1;"), ("z", "var z = 1;"), ("b", "var b = a;"), ("c", "b")).Above("c"));

    [Fact]
    public void A_using_line_reaches_everything_below() =>
        Assert.Equal(["b"], Of(("a", "using System.Text;"), ("b", "1 + 1")).Below("a"));

    [Theory]
    [InlineData("var n = list.RemoveAll(x => x > limit);", "list n", "limit list")]
    [InlineData("Array.Sort(values);", "values", "Array values")]
    [InlineData("var text = string.Join(\",\", names);", "text", "names")]
    [InlineData("void Up() { total += step; }", "Up", "step total")]
    [InlineData("Counter.Total++;", "Counter", "Counter")]
    public void Calls_that_change_something_define_it(string code, string defines, string uses)
    {
        var names = CodeNames.Of(code);
        Assert.Equal(Words(defines), names.Defines.Order(StringComparer.Ordinal));
        Assert.Equal(Words(uses), names.Uses.Where(name => name != "var").Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_static_field_changed_in_one_step_reaches_those_that_read_it() =>
        Assert.Equal(["c"], Of(("a", "static class Counter { public static int Total; }"), ("b", "Counter.Total = 5;"), ("c", "Counter.Total"), ("d", "1")).Below("b"));

    [Fact]
    public void A_function_brings_what_it_uses_and_changes_to_where_it_is_called()
    {
        var steps = Of(("a", "var k = 2; var total = 0;"), ("b", "double F(double x) { total++; return x * k; }"), ("c", "k = 3;"), ("d", "F(1)"), ("e", "total"));
        Assert.Equal(["d", "e"], steps.Below("c"));
        Assert.Equal(["e"], steps.Below("d"));
    }

    [Fact]
    public void What_is_changed_under_another_name_is_perhaps_changed()
    {
        var steps = Of(("a", "var l = new List<int>();"), ("b", "var m = l;"), ("c", "m.Add(1);"), ("d", "l.Count"), ("e", "m.Count"));
        Assert.Equal([("d", false), ("e", true)], steps.Reached("c"));
    }

    [Fact]
    public void What_is_handed_to_a_function_of_the_notebook_is_perhaps_changed() =>
        Assert.Equal([("d", false)], Of(("a", "void Grow(List<int> x) => x.Add(1);"), ("b", "var l = new List<int>();"), ("c", "Grow(l);"), ("d", "l.Count"), ("e", "2")).Reached("c"));

    [Fact]
    public void A_step_that_changes_in_place_needs_what_made_and_changed_it_before() =>
        Assert.Equal(["a", "b"], Of(("a", "var l = new List<int>();"), ("x", "l.Count"), ("b", "l.Add(1);"), ("c", "l.Add(2);")).Renewers("c"));

    private static Dependence Of(params (string Id, string Code)[] steps) => new([.. steps.Select(step => (step.Id, CodeNames.Of(step.Code)))]);

    private static string[] Words(string text) => [.. text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal)];
}
