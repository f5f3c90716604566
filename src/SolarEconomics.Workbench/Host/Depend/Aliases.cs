using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace SolarEconomics.Workbench;

/// <summary>Which names may stand for one object, or for one that holds the other: what is changed under the one is perhaps changed under the other.</summary>
internal static class Aliases
{
    /// <summary>Methods that hand out what their object holds.</summary>
    private static readonly HashSet<string> Handing = new(StringComparer.Ordinal)
    {
        "ElementAt", "ElementAtOrDefault", "Find", "First", "FirstOrDefault", "GetValueOrDefault", "Last", "LastOrDefault", "MaxBy", "MinBy", "Peek", "Single", "SingleOrDefault",
    };

    /// <summary>Pairs that a piece of code makes: <c>var b = a</c>, <c>var h = new Holder(a)</c>, <c>foreach (var b in a)</c>.</summary>
    public static IEnumerable<(string One, string Other)> MadeBy(SyntaxNode node) => node switch
    {
        VariableDeclaratorSyntax { Initializer.Value: { } value } variable => Pairs(variable.Identifier.ValueText, value),
        AssignmentExpressionSyntax { Left: IdentifierNameSyntax one } assignment => Pairs(one.Identifier.ValueText, assignment.Right),
        AssignmentExpressionSyntax { Left: MemberAccessExpressionSyntax or ElementAccessExpressionSyntax } assignment => ChangingCalls.Root(assignment.Left).SelectMany(one => Pairs(one, assignment.Right)),
        ForEachStatementSyntax loop => ChangingCalls.Root(loop.Expression).Select(other => (loop.Identifier.ValueText, other)),
        InvocationExpressionSyntax call when ChangingCalls.ReceiverOf(call) is { Receiver: var receiver, Method: var method } && ChangingCalls.IsVerb(method) =>
            ChangingCalls.Root(receiver).SelectMany(one => call.ArgumentList.Arguments.SelectMany(given => Pairs(one, given.Expression))),
        _ => [],
    };

    /// <summary>Names that mean the same object as one of some names inside a piece of code that makes the pairs.</summary>
    public static HashSet<string> Closure(IEnumerable<string> names, IReadOnlyCollection<(string One, string Other)> same)
    {
        var all = names.ToHashSet(StringComparer.Ordinal);
        for (var count = -1; count != all.Count;)
        {
            count = all.Count;
            foreach (var (one, other) in same) if (all.Contains(one) || all.Contains(other)) { all.Add(one); all.Add(other); }
        }
        return all;
    }

    private static IEnumerable<(string One, string Other)> Pairs(string one, ExpressionSyntax value) => Shared(value).Where(other => other != one).Select(other => (one, other));

    /// <summary>Names whose object the value of an expression may be, or may hold.</summary>
    private static IEnumerable<string> Shared(ExpressionSyntax? value) => value switch
    {
        IdentifierNameSyntax or ElementAccessExpressionSyntax or MemberAccessExpressionSyntax or ConditionalAccessExpressionSyntax => ChangingCalls.Root(value),
        ParenthesizedExpressionSyntax inner => Shared(inner.Expression),
        CastExpressionSyntax inner => Shared(inner.Expression),
        ConditionalExpressionSyntax either => Shared(either.WhenTrue).Concat(Shared(either.WhenFalse)),
        BinaryExpressionSyntax { OperatorToken.ValueText: "??" or "as" } either => Shared(either.Left).Concat(Shared(either.Right)),
        BaseObjectCreationExpressionSyntax made => (made.ArgumentList?.Arguments ?? []).SelectMany(given => Shared(given.Expression)).Concat(Shared(made.Initializer)),
        InitializerExpressionSyntax list => list.Expressions.SelectMany(one => Shared(one is AssignmentExpressionSyntax assignment ? assignment.Right : one)),
        ArrayCreationExpressionSyntax made => Shared(made.Initializer),
        ImplicitArrayCreationExpressionSyntax made => Shared(made.Initializer),
        AnonymousObjectCreationExpressionSyntax made => made.Initializers.SelectMany(one => Shared(one.Expression)),
        TupleExpressionSyntax tuple => tuple.Arguments.SelectMany(one => Shared(one.Expression)),
        CollectionExpressionSyntax list => list.Elements.OfType<ExpressionElementSyntax>().SelectMany(one => Shared(one.Expression)),
        InvocationExpressionSyntax call => SharedBy(call),
        _ => [],
    };

    private static IEnumerable<string> SharedBy(InvocationExpressionSyntax call)
    {
        if (ChangingCalls.ReceiverOf(call) is not { } one) return call.ArgumentList.Arguments.SelectMany(given => Shared(given.Expression));
        if (Handing.Contains(one.Method)) return ChangingCalls.Root(one.Receiver);
        return KnownMethods.LeaveAlone(one.Method) ? [] : ChangingCalls.Root(one.Receiver).Concat(call.ArgumentList.Arguments.SelectMany(given => Shared(given.Expression)));
    }
}
