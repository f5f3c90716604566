using System.Reflection;
using Xunit.Sdk;

namespace SolarEconomics.Tests;

/// <summary>Feeds a theory with the ids of all published rows of one kind of formula.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class PublishedRowsAttribute(string check) : DataAttribute
{
    public string Check => check;

    public IEnumerable<string> Ids => Published.Rows.Values.Where(r => r.Check == check).Select(r => r.Id);

    public override IEnumerable<object[]> GetData(MethodInfo testMethod) => Ids.Select(id => new object[] { id });
}
