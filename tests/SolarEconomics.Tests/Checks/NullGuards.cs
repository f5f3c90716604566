using System.Reflection;

namespace SolarEconomics.Tests;

/// <summary>Hands nothing to every parameter of a room's public members that must have something: each is to refuse it by its name.</summary>
/// <param name="samples">Instances by type: of what a member belongs to, and of the parameters before the one left out.</param>
internal sealed class NullGuards(params object[] samples)
{
    private static readonly NullabilityInfoContext s_nullability = new();

    /// <summary>Members tried and those that did not refuse, as "Type.Member(parameter): what came".</summary>
    internal (int Tried, IReadOnlyList<string> Faults) Try(IEnumerable<Type> types)
    {
        var (tried, faults) = (0, new List<string>());
        foreach (var type in types)
        {
            foreach (var method in type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            {
                if (method.IsSpecialName || method.IsGenericMethodDefinition || method.Name is "Equals" or "Deconstruct" || method.Name.StartsWith('<')) continue;
                // A span cannot be handed over by reflection.
                if (Array.Exists(method.GetParameters(), p => p.ParameterType.IsByRefLike)) continue;
                var owner = method.IsStatic ? null : SampleOf(type);
                if (!method.IsStatic && owner is null) continue;
                foreach (var parameter in method.GetParameters().Where(MustHaveSomething))
                {
                    if (ArgumentsWithout(method, parameter) is not { } arguments) continue;
                    tried++;
                    if (WhatCame(method, owner, arguments, parameter) is { } came) faults.Add($"{type.Name}.{method.Name}({parameter.Name}): {came}");
                }
            }
        }
        return (tried, faults);
    }

    private static string? WhatCame(MethodInfo method, object? owner, object?[] arguments, ParameterInfo parameter)
    {
        try
        {
            method.Invoke(owner, arguments);
            return "no refusal";
        }
        catch (TargetInvocationException refusal)
        {
            return refusal.InnerException is ArgumentNullException error && error.ParamName == parameter.Name ? null : refusal.InnerException!.GetType().Name + ": " + refusal.InnerException.Message;
        }
    }

    private static bool MustHaveSomething(ParameterInfo parameter) =>
        !parameter.ParameterType.IsValueType && !parameter.IsOut && s_nullability.Create(parameter).WriteState is NullabilityState.NotNull;

    /// <summary>Samples before the parameter, nothing at it, and what the compiler would fill in behind it.</summary>
    private object?[]? ArgumentsWithout(MethodInfo method, ParameterInfo missing)
    {
        var parameters = method.GetParameters();
        var arguments = new object?[parameters.Length];
        foreach (var parameter in parameters)
        {
            if (parameter.Position == missing.Position) continue;
            var sample = SampleOf(parameter.ParameterType) ?? NumberOf(parameter.ParameterType);
            if (sample is null && parameter.Position < missing.Position && MustHaveSomething(parameter)) return null;
            arguments[parameter.Position] = sample;
        }
        return arguments;
    }

    /// <summary>A one for numbers, as a nought often has a meaning of its own; the default of other values.</summary>
    private static object? NumberOf(Type type) => !type.IsValueType ? null
        : type == typeof(decimal) || type == typeof(double) || type == typeof(int) ? Convert.ChangeType(1, type, System.Globalization.CultureInfo.InvariantCulture)
        : Activator.CreateInstance(type);

    private object? SampleOf(Type type) => Array.Find(samples, type.IsInstanceOfType);

    /// <summary>Public types whose file stands in a folder of the domain.</summary>
    internal static IEnumerable<Type> TypesOf(string room)
    {
        var names = Directory.GetFiles(Path.Combine(Published.Root(), "src", "SolarEconomics", room), "*.cs", SearchOption.AllDirectories)
            .Select(file => Path.GetFileName(file).Split('.')[0]).ToHashSet(StringComparer.Ordinal);
        return typeof(Bill).Assembly.GetExportedTypes().Where(type => names.Contains(type.Name.Split('`')[0]));
    }
}
