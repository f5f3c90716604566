using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace SolarEconomics.Workbench;

/// <summary>Which calls may change what they are called on, as far as their names tell.</summary>
internal static class ChangingCalls
{
    private static readonly HashSet<string> Verbs = new(StringComparer.Ordinal)
    {
        "Add", "AddAfter", "AddBefore", "AddFirst", "AddLast", "AddOrUpdate", "AddRange", "Append", "AppendFormat", "AppendJoin", "AppendLine", "Clear", "Copy", "CopyTo", "Dequeue",
        "DequeueEnqueue", "Enqueue", "EnqueueDequeue", "ExceptWith", "Fill", "GetOrAdd", "Increment", "Insert", "InsertRange", "IntersectWith", "MoveNext", "Next", "NextBytes", "NextDouble",
        "NextInt64", "NextSingle", "Pop", "Push", "Read", "ReadAsync", "ReadByte", "ReadLine", "ReadLineAsync", "ReadToEnd", "Remove", "RemoveAll", "RemoveAt", "RemoveFirst", "RemoveLast",
        "RemoveRange", "RemoveWhere", "Resize", "Reverse", "Set", "SetValue", "Shuffle", "Sort", "SymmetricExceptWith", "TryAdd", "TryDequeue", "TryPop", "TryRemove", "TryTake", "TryUpdate",
        "UnionWith", "Update", "Write", "WriteLine",
    };

    /// <summary>Whether a name alone says that a method changes its object.</summary>
    public static bool IsVerb(string method) => Verbs.Contains(method);

    /// <summary>Whether a call changes the object that it is called on.</summary>
    public static bool ChangesItsObject(InvocationExpressionSyntax call) =>
        // What is printed changes nothing that a later step reads.
        ReceiverOf(call) is { } one && one.Receiver is not IdentifierNameSyntax { Identifier.ValueText: "Console" } && (IsForItsEffect(call) || IsVerb(one.Method));

    /// <summary>Whether a call changes what it is given first, as <c>Array.Sort(values)</c> does.</summary>
    public static bool ChangesItsArgument(InvocationExpressionSyntax call) => call.Expression is MemberAccessExpressionSyntax { Expression: IdentifierNameSyntax { Identifier.ValueText: "Array" or "CollectionsMarshal" } } access
        && IsVerb(access.Name.Identifier.ValueText);

    /// <summary>The method that a call names and what it is called on: <c>M</c> and <c>a</c> in <c>a.M()</c> and <c>a?.M()</c>; null for a function alone.</summary>
    public static (string Method, ExpressionSyntax Receiver)? ReceiverOf(InvocationExpressionSyntax call) => call.Expression switch
    {
        MemberAccessExpressionSyntax access => (access.Name.Identifier.ValueText, access.Expression),
        MemberBindingExpressionSyntax binding when call.Ancestors().OfType<ConditionalAccessExpressionSyntax>().FirstOrDefault() is { } access => (binding.Name.Identifier.ValueText, access.Expression),
        _ => null,
    };

    /// <summary>The variable that an expression is about: <c>a</c> in <c>a.B[2].C()</c>.</summary>
    public static IEnumerable<string> Root(ExpressionSyntax expression) => expression switch
    {
        IdentifierNameSyntax name => [name.Identifier.ValueText],
        ThisExpressionSyntax => ["this"],
        MemberAccessExpressionSyntax access => Root(access.Expression),
        MemberBindingExpressionSyntax binding when binding.Ancestors().OfType<ConditionalAccessExpressionSyntax>().FirstOrDefault() is { } access => Root(access.Expression),
        ConditionalAccessExpressionSyntax access => Root(access.Expression),
        ElementAccessExpressionSyntax access => Root(access.Expression),
        InvocationExpressionSyntax call => Root(call.Expression),
        ParenthesizedExpressionSyntax inner => Root(inner.Expression),
        CastExpressionSyntax inner => Root(inner.Expression),
        AwaitExpressionSyntax inner => Root(inner.Expression),
        PostfixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.SuppressNullableWarningExpression } inner => Root(inner.Operand),
        TupleExpressionSyntax tuple => tuple.Arguments.SelectMany(argument => Root(argument.Expression)),
        _ => [],
    };

    /// <summary>A call whose value nobody takes has an effect; an expression that is the step's answer has no semicolon.</summary>
    private static bool IsForItsEffect(InvocationExpressionSyntax call)
    {
        var whole = call.Ancestors().TakeWhile(above => above is ConditionalAccessExpressionSyntax or AwaitExpressionSyntax).LastOrDefault() ?? call;
        return whole.Parent is ExpressionStatementSyntax { SemicolonToken.IsMissing: false };
    }
}
