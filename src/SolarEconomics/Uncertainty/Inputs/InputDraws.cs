namespace SolarEconomics;

/// <summary>Draws of an outlook's inputs. An input's scores follow from seed, draw and its name alone: the same whatever else is drawn beside it.</summary>
internal sealed class InputDraws
{
    private const string WeatherName = "weather of each year";

    private readonly UncertainInput[] _inputs;
    private readonly uint[] _streams;
    private readonly double[,]? _root;
    private readonly double _weatherSd;
    private readonly ulong _seed;
    private readonly int[] _held;

    internal InputDraws(Uncertainties uncertainties, ulong seed)
    {
        _inputs = [.. uncertainties.Inputs];
        Names = [.. _inputs.Select(i => i.Input.Name)];
        _streams = [.. Names.Select(StreamOf)];
        _root = CorrelationRoot.Of(Names, uncertainties.Pairs);
        _weatherSd = uncertainties.WeatherSd;
        _seed = seed;
        _held = new int[_inputs.Length];
    }

    internal IReadOnlyList<string> Names { get; }

    /// <summary>How many draws of each input lay beyond what an outlook takes, and were held at its end.</summary>
    internal IReadOnlyList<int> Held => _held;

    /// <summary>Puts one draw of every input into assumptions.</summary>
    /// <param name="base_">The assumptions as they stand.</param>
    /// <param name="draw">Number of the draw.</param>
    /// <param name="values">Gets the drawn values, one per input.</param>
    internal Assumptions Put(Assumptions base_, int draw, Span<double> values)
    {
        Span<double> scores = stackalloc double[_inputs.Length];
        for (var i = 0; i < scores.Length; i++) scores[i] = ScoreOf(_streams[i], draw, 0);
        for (var i = 0; i < scores.Length; i++)
        {
            var score = scores[i];
            if (_root is not null)
            {
                score = 0;
                for (var k = 0; k <= i; k++) score += _root[i, k] * scores[k];
            }
            var (input, distribution) = _inputs[i];
            var drawn = distribution.AtScore(score);
            values[i] = Math.Clamp(drawn, input.Lowest, input.Highest);
            if (values[i] != drawn) Interlocked.Increment(ref _held[i]);
            base_ = input.Put(base_, values[i]);
        }
        return base_;
    }

    /// <summary>Each year's own factor on generation, not below 0.</summary>
    internal void Weather(int draw, Span<double> factors)
    {
        var stream = StreamOf(WeatherName);
        for (var year = 0; year < factors.Length; year++)
            factors[year] = _weatherSd > 0 ? Math.Max(0, 1 + (_weatherSd * ScoreOf(stream, draw, year))) : 1;
    }

    /// <summary>The score that belongs to a name, for events such as failures.</summary>
    internal double ScoreOf(string name, int draw, int index) => ScoreOf(StreamOf(name), draw, index);

    private double ScoreOf(uint stream, int draw, int index)
    {
        var (a, b, c, d) = NormalScores.Four<Words1, Lanes1>((ulong)draw, (uint)(index / 4), stream, _seed);
        return (index % 4) switch { 0 => a.Value, 1 => b.Value, 2 => c.Value, _ => d.Value };
    }

    /// <summary>A number that stays the same for a name on every machine and in every version (FNV-1a over its letters).</summary>
    internal static uint StreamOf(string name)
    {
        var hash = 2166136261u;
        foreach (var letter in name) hash = (hash ^ letter) * 16777619u;
        return hash;
    }
}
