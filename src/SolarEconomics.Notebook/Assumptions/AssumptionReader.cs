using System.Globalization;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace SolarEconomics.Notebook;

/// <summary>Reads the declarations of assumptions from a step's code, without running it.</summary>
internal static class AssumptionReader
{
    private static readonly CSharpParseOptions Script = new(LanguageVersion.Latest, kind: SourceCodeKind.Script);

    /// <summary>What the step declares, in its order; what looks like a declaration but cannot be read goes to <paramref name="problems"/>.</summary>
    internal static IReadOnlyList<FoundAssumption> Read(NotebookStep step, List<string> problems)
    {
        var found = new List<FoundAssumption>();
        foreach (var variable in CSharpSyntaxTree.ParseText(step.Source, Script).GetRoot().DescendantNodes().OfType<VariableDeclaratorSyntax>())
        {
            if (variable.Initializer?.Value is not InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax call } invocation) continue;
            if (!IsAssume(call.Expression) || !Enum.TryParse<AssumptionKind>(call.Name.Identifier.Text, out var kind)) continue;
            if (ReadOne(step, variable.Identifier, kind, invocation.ArgumentList) is { } one) found.Add(one);
            else problems.Add(Throw.UnreadableAssumption(variable.Identifier.Text, LineOf(variable)));
        }
        return found;
    }

    private static FoundAssumption? ReadOne(NotebookStep step, SyntaxToken name, AssumptionKind kind, ArgumentListSyntax arguments)
    {
        var order = kind == AssumptionKind.Number ? new[] { "label", "value", "unit", "from", "to" } : ["label", "value", "from", "to"];
        var given = order.Select((parameter, place) => Argument(arguments, parameter, place)).ToDictionary(a => a.Parameter, a => a.Value, StringComparer.Ordinal);
        if (Text(given["label"]) is not { } label
            || Number(given["value"]) is not { } value
            || Number(given["from"]) is not { } from
            || Number(given["to"]) is not { } to) return null;
        var unit = kind switch
        {
            AssumptionKind.Rate => "fraction a year",
            AssumptionKind.Share => "fraction",
            AssumptionKind.Years => "years",
            _ => Text(given["unit"]),
        };
        return unit is null ? null : new(new(name.Text, label, kind, unit, value, from, to, step.Id), given["value"]!.Span);
    }

    private static (string Parameter, ExpressionSyntax? Value) Argument(ArgumentListSyntax list, string parameter, int place)
    {
        var named = list.Arguments.FirstOrDefault(a => a.NameColon?.Name.Identifier.Text == parameter);
        var placed = place < list.Arguments.Count && list.Arguments[place].NameColon is null ? list.Arguments[place] : null;
        return (parameter, (named ?? placed)?.Expression);
    }

    private static bool IsAssume(ExpressionSyntax expression) => expression switch
    {
        IdentifierNameSyntax name => name.Identifier.Text == nameof(Assume),
        MemberAccessExpressionSyntax qualified => qualified.Name.Identifier.Text == nameof(Assume),
        _ => false,
    };

    private static string? Text(ExpressionSyntax? expression) =>
        expression is LiteralExpressionSyntax literal && literal.IsKind(SyntaxKind.StringLiteralExpression) ? literal.Token.ValueText : null;

    // Only a number that stands there as such can be replaced: a sum or a name would be lost.
    private static double? Number(ExpressionSyntax? expression) => expression switch
    {
        LiteralExpressionSyntax literal when literal.IsKind(SyntaxKind.NumericLiteralExpression) =>
            Convert.ToDouble(literal.Token.Value, CultureInfo.InvariantCulture),
        PrefixUnaryExpressionSyntax minus when minus.IsKind(SyntaxKind.UnaryMinusExpression) => -Number(minus.Operand),
        _ => null,
    };

    private static int LineOf(SyntaxNode node) => node.GetLocation().GetLineSpan().StartLinePosition.Line + 1;
}
