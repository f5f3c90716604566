using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace SolarEconomics.Workbench;

/// <summary>Names that a piece of code touches without having made them itself.</summary>
internal static class FreeNames
{
    /// <param name="code">The piece of code.</param>
    /// <param name="elsewhere">Parts that change something only where they are called.</param>
    /// <param name="own">Names that count although the code declares them: what it was handed.</param>
    public static Touched In(SyntaxNode code, IReadOnlySet<SyntaxNode>? elsewhere = null, IReadOnlySet<string>? own = null)
    {
        var inner = code.DescendantNodesAndSelf().SelectMany(DeclaredInside).ToHashSet(StringComparer.Ordinal);
        if (own is not null) inner.ExceptWith(own);
        var uses = code.DescendantNodes().OfType<IdentifierNameSyntax>().Where(IsFree).Select(name => name.Identifier.ValueText).ToHashSet(StringComparer.Ordinal);
        var here = code.DescendantNodes(into => elsewhere?.Contains(into) != true).Where(node => elsewhere?.Contains(node) != true).ToList();
        var changes = here.SelectMany(Rebound).ToHashSet(StringComparer.Ordinal);
        // A local name for something from outside: what is changed under it is changed outside.
        var locals = here.SelectMany(Aliases.MadeBy).Where(pair => inner.Contains(pair.One)).ToList();
        IEnumerable<string> Outside(string name) => inner.Contains(name) ? Aliases.Closure([name], locals) : [name];
        var inside = here.SelectMany(ChangedInside).SelectMany(Outside).ToHashSet(StringComparer.Ordinal);
        var asked = here.OfType<InvocationExpressionSyntax>().SelectMany(Asked).SelectMany(one => Outside(one.Name).Select(name => (one.Method, name))).Where(one => !inner.Contains(one.name));
        changes.UnionWith(inside);
        foreach (var names in (HashSet<string>[])[uses, changes, inside]) names.ExceptWith(inner);
        return new Touched(uses, changes, inside, [.. asked.Distinct()]);
    }

    /// <summary>Whether a name stands for itself: not the member after a dot, not the label of an argument or of an initialiser.</summary>
    public static bool IsFree(IdentifierNameSyntax name) => name.Parent switch
    {
        MemberAccessExpressionSyntax access => access.Name != name,
        MemberBindingExpressionSyntax or NameColonSyntax or NameEqualsSyntax or QualifiedNameSyntax => false,
        VariableDeclarationSyntax => !name.IsVar,
        AssignmentExpressionSyntax { Parent: InitializerExpressionSyntax } assignment => assignment.Left != name,
        _ => true,
    };

    /// <summary>Names that live only inside: parameters, loop variables, locals of blocks.</summary>
    private static IEnumerable<string> DeclaredInside(SyntaxNode node) => node switch
    {
        ParameterSyntax parameter => [parameter.Identifier.ValueText],
        ForEachStatementSyntax loop => [loop.Identifier.ValueText],
        CatchDeclarationSyntax caught => [caught.Identifier.ValueText],
        VariableDeclaratorSyntax variable when variable.Ancestors().Any(above => above is BlockSyntax or ForStatementSyntax or UsingStatementSyntax) => [variable.Identifier.ValueText],
        FromClauseSyntax from => [from.Identifier.ValueText],
        LetClauseSyntax let => [let.Identifier.ValueText],
        _ => [],
    };

    /// <summary>Names that mean another value afterwards: assigned, stepped, or passed by reference.</summary>
    private static IEnumerable<string> Rebound(SyntaxNode node) => node switch
    {
        AssignmentExpressionSyntax { Parent: not InitializerExpressionSyntax, Left: IdentifierNameSyntax or TupleExpressionSyntax } assignment => ChangingCalls.Root(assignment.Left),
        PrefixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.PreIncrementExpression or (int)SyntaxKind.PreDecrementExpression, Operand: IdentifierNameSyntax name } => [name.Identifier.ValueText],
        PostfixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.PostIncrementExpression or (int)SyntaxKind.PostDecrementExpression, Operand: IdentifierNameSyntax name } => [name.Identifier.ValueText],
        ArgumentSyntax { RefKindKeyword.RawKind: (int)SyntaxKind.RefKeyword or (int)SyntaxKind.OutKeyword } argument => ChangingCalls.Root(argument.Expression),
        _ => [],
    };

    /// <summary>Names whose object is changed: a member or an element is assigned, or a call changes it.</summary>
    private static IEnumerable<string> ChangedInside(SyntaxNode node) => node switch
    {
        AssignmentExpressionSyntax { Parent: not InitializerExpressionSyntax, Left: not (IdentifierNameSyntax or TupleExpressionSyntax) } assignment => ChangingCalls.Root(assignment.Left),
        PrefixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.PreIncrementExpression or (int)SyntaxKind.PreDecrementExpression, Operand: not IdentifierNameSyntax } step => ChangingCalls.Root(step.Operand),
        PostfixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.PostIncrementExpression or (int)SyntaxKind.PostDecrementExpression, Operand: not IdentifierNameSyntax } step => ChangingCalls.Root(step.Operand),
        InvocationExpressionSyntax call when ChangingCalls.ChangesItsArgument(call) && call.ArgumentList.Arguments is [{ } first, ..] => ChangingCalls.Root(first.Expression),
        InvocationExpressionSyntax call when ChangingCalls.ChangesItsObject(call) => ChangingCalls.Root(call.Expression),
        _ => [],
    };

    private static IEnumerable<(string Method, string Name)> Asked(InvocationExpressionSyntax call) =>
        ChangingCalls.ReceiverOf(call) is { } one && !ChangingCalls.ChangesItsObject(call) ? ChangingCalls.Root(one.Receiver).Select(name => (one.Method, name)) : [];
}
