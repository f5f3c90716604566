using System.Collections;
using NodaTime;

namespace SolarEconomics;

/// <summary>A column of times, read like an array without being one: the starts or the ends of a channel's intervals, exact to 100 ns.</summary>
/// <remarks>Immutable, so safe to share between threads. The <c>default</c> is empty.</remarks>
public readonly struct Instants : IReadOnlyList<Instant>, IEquatable<Instants>
{
    private readonly TimeAxis? _axis;
    private readonly bool _ends;

    internal Instants(TimeAxis axis, bool ends) => (_axis, _ends) = (axis, ends);

    /// <summary>Number of times.</summary>
    public int Count => _axis?.Count ?? 0;

    /// <summary>One time.</summary>
    /// <param name="index">Range: 0 to <see cref="Count"/> − 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The index is outside.</exception>
    public Instant this[int index] => Instant.FromUnixTimeTicks(TicksAt(index));

    /// <summary>Whether two columns hold the same times.</summary>
    /// <param name="other">The other column.</param>
    public bool SequenceEqual(Instants other)
    {
        if (Count != other.Count) return false;
        for (var i = 0; i < Count; i++)
            if (TicksAt(i) != other.TicksAt(i)) return false;
        return true;
    }

    /// <summary>The times as an array of their own.</summary>
    public Instant[] ToArray()
    {
        var times = new Instant[Count];
        for (var i = 0; i < times.Length; i++) times[i] = this[i];
        return times;
    }

    /// <inheritdoc />
    public IEnumerator<Instant> GetEnumerator()
    {
        for (var i = 0; i < Count; i++) yield return this[i];
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>Whether both are the same column of the same channel.</summary>
    /// <param name="other">The other column.</param>
    public bool Equals(Instants other) => ReferenceEquals(_axis, other._axis) && _ends == other._ends;

    /// <inheritdoc />
    public override bool Equals(object? obj) => obj is Instants other && Equals(other);

    /// <inheritdoc />
    public override int GetHashCode() => HashCode.Combine(_axis, _ends);

    /// <summary>Whether both are the same column of the same channel.</summary>
    /// <param name="left">One column.</param>
    /// <param name="right">The other column.</param>
    public static bool operator ==(Instants left, Instants right) => left.Equals(right);

    /// <summary>Whether they are different columns.</summary>
    /// <param name="left">One column.</param>
    /// <param name="right">The other column.</param>
    public static bool operator !=(Instants left, Instants right) => !left.Equals(right);

    /// <summary>Ticks of 100 ns since 1970 of one time.</summary>
    internal long TicksAt(int index)
    {
        if ((uint)index >= (uint)Count) throw new ArgumentOutOfRangeException(nameof(index), index, FormattableString.Invariant($"Expected an index from 0 to {Count - 1}."));
        return _ends ? _axis!.EndTicks(index) : _axis!.StartTicks(index);
    }
}
