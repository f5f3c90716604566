using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace SolarEconomics.Workbench;

/// <summary>Which calls may change what they are called on, as far as their names tell. Results of the library never change, so asking one for a value is no change.</summary>
internal static class ChangingCalls
{
    private static readonly string[] Verbs =
    [
        "Add", "AddRange", "Append", "AppendLine", "Clear", "Copy", "CopyTo", "Dequeue", "Enqueue", "ExceptWith", "Fill", "Increment", "Insert", "InsertRange", "IntersectWith", "MoveNext",
        "Next", "Pop", "Push", "Read", "ReadLine", "Remove", "RemoveAll", "RemoveAt", "RemoveRange", "Resize", "Reverse", "Set", "SetValue", "Shuffle", "Sort", "TryAdd", "TryDequeue", "TryPop",
        "TryRemove", "UnionWith", "Update", "Write", "WriteLine",
    ];

    /// <summary>Whether a call changes the object that it is called on.</summary>
    public static bool ChangesItsObject(InvocationExpressionSyntax call) => call.Expression is MemberAccessExpressionSyntax access
        // A call for its effect alone has one; an expression that is the step's answer has no semicolon.
        && (call.Parent is ExpressionStatementSyntax { SemicolonToken.IsMissing: false } || Verbs.Contains(access.Name.Identifier.ValueText, StringComparer.Ordinal));

    /// <summary>Whether a call changes what it is given first, as <c>Array.Sort(values)</c> does.</summary>
    public static bool ChangesItsArgument(InvocationExpressionSyntax call) => call.Expression is MemberAccessExpressionSyntax { Expression: IdentifierNameSyntax { Identifier.ValueText: "Array" or "CollectionsMarshal" } } access
        && Verbs.Contains(access.Name.Identifier.ValueText, StringComparer.Ordinal);

    /// <summary>The name of the function that a call calls directly; null for a member of something.</summary>
    public static string? FunctionOf(InvocationExpressionSyntax call) => (call.Expression as IdentifierNameSyntax)?.Identifier.ValueText;

    /// <summary>The variable that an expression is about: <c>a</c> in <c>a.B[2].C()</c>.</summary>
    public static IEnumerable<string> Root(ExpressionSyntax expression) => expression switch
    {
        IdentifierNameSyntax name => [name.Identifier.ValueText],
        MemberAccessExpressionSyntax access => Root(access.Expression),
        ElementAccessExpressionSyntax access => Root(access.Expression),
        InvocationExpressionSyntax call => Root(call.Expression),
        ParenthesizedExpressionSyntax inner => Root(inner.Expression),
        PostfixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.SuppressNullableWarningExpression } inner => Root(inner.Operand),
        TupleExpressionSyntax tuple => tuple.Arguments.SelectMany(argument => Root(argument.Expression)),
        _ => [],
    };
}
