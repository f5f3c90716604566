using System.Globalization;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>The assumptions that a step tagged <c>assumptions</c> declares, as the page shows them.</summary>
internal static class DeclaredAssumptions
{
    private static readonly CSharpParseOptions Script = new(LanguageVersion.Latest, kind: SourceCodeKind.Script);

    public static IEnumerable<AssumptionView> In(NotebookStep step) =>
        step.Kind == StepKind.Code && step.Tags.Contains("assumptions", StringComparer.Ordinal) ? Calls(step.Source).Select(View).OfType<AssumptionView>() : [];

    /// <summary>The code with another value for one assumption; everything else stays as it was typed.</summary>
    public static string With(string code, string name, double value)
    {
        var call = Calls(code).First(one => one.Name == name).Call;
        var span = Argument(call, "value", 1)!.Expression.Span;
        return string.Concat(code.AsSpan(0, span.Start), value.ToString("0.############", CultureInfo.InvariantCulture), code.AsSpan(span.End));
    }

    private static IEnumerable<(string Name, InvocationExpressionSyntax Call)> Calls(string code) =>
        from variable in CSharpSyntaxTree.ParseText(code, Script).GetRoot().DescendantNodes().OfType<VariableDeclaratorSyntax>()
        let call = variable.Initializer?.Value as InvocationExpressionSyntax
        where call?.Expression is MemberAccessExpressionSyntax { Expression: IdentifierNameSyntax { Identifier.ValueText: "Assume" } }
        select (variable.Identifier.ValueText, call);

    private static AssumptionView? View((string Name, InvocationExpressionSyntax Call) declared)
    {
        var (name, call) = declared;
        var kind = ((MemberAccessExpressionSyntax)call.Expression).Name.Identifier.ValueText;
        var after = kind == "Number" ? 1 : 0;
        if (Text(Argument(call, "label", 0)) is not { } label || Number(Argument(call, "value", 1)) is not { } value
            || Number(Argument(call, "from", 2 + after)) is not { } from || Number(Argument(call, "to", 3 + after)) is not { } to) return null;
        var unit = kind switch { "Rate" => "% a year", "Share" => "%", "Years" => "years", _ => Text(Argument(call, "unit", 2)) ?? "" };
        return new AssumptionView(name, label, value, unit, from, to, kind switch { "Rate" => 0.001, "Share" => 0.01, "Years" => 1, _ => NiceStep(to - from) });
    }

    private static double NiceStep(double range) => range <= 0 ? 1 : Math.Pow(10, Math.Floor(Math.Log10(range)) - 2);

    private static ArgumentSyntax? Argument(InvocationExpressionSyntax call, string name, int at) =>
        call.ArgumentList.Arguments.FirstOrDefault(one => one.NameColon?.Name.Identifier.ValueText == name)
        ?? call.ArgumentList.Arguments.ElementAtOrDefault(at) switch { { NameColon: null } argument => argument, _ => null };

    private static string? Text(ArgumentSyntax? argument) => (argument?.Expression as LiteralExpressionSyntax)?.Token.Value as string;

    private static double? Number(ArgumentSyntax? argument) => argument?.Expression switch
    {
        LiteralExpressionSyntax { Token.Value: IConvertible and not string and { } number } => Convert.ToDouble(number, CultureInfo.InvariantCulture),
        PrefixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.UnaryMinusExpression, Operand: LiteralExpressionSyntax { Token.Value: IConvertible and not string and { } number } } => -Convert.ToDouble(number, CultureInfo.InvariantCulture),
        _ => null,
    };
}
