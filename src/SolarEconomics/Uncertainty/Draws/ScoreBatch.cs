using System.Runtime.CompilerServices;

namespace SolarEconomics;

/// <summary>Scores of some draws, four to a block: the same as <see cref="NormalScores.Four"/> gives, worked out in two short loops.</summary>
/// <remarks>A score is a long chain of operations, each of which waits for the one before. First the words of all draws, then their scores: the turns of such a
/// loop do not wait for each other, so the processor works on several at once. What passes between the loops stays in its nearest cache.</remarks>
internal sealed class ScoreBatch<TWords, TLanes>
    where TWords : struct, IWords<TWords, TLanes>
    where TLanes : struct, ILanes<TLanes>
{
    /// <summary>Draws of a batch. A multiple of every width.</summary>
    internal const int Draws = 64;

    /// <summary>Words carried as doubles of the same bits: first those of scores 0 and 1 of every draw, then those of 2 and 3.</summary>
    private readonly double[] _words = new double[2 * Draws];
    private readonly double[] _scores = new double[4 * Draws];

    /// <summary>One of the four scores of a block, for every draw.</summary>
    internal ReadOnlySpan<double> Score(int number) => _scores.AsSpan(number * Draws, Draws);

    /// <summary>Works out a block of the draws from a first one on.</summary>
    internal void Fill(ulong first, uint block, uint stream, ulong seed)
    {
        DrawWords(_words, first, block, stream, seed);
        for (var pair = 0; pair < 2; pair++)
            WriteScores(_words.AsSpan(pair * Draws, Draws), _scores.AsSpan(2 * pair * Draws, Draws), _scores.AsSpan(((2 * pair) + 1) * Draws, Draws));
    }

    // Calls of their own: each loop with all that it calls fits into what the compiler takes inline.
    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    private static void DrawWords(Span<double> words, ulong first, uint block, uint stream, ulong seed)
    {
        for (var at = 0; at < Draws; at += TLanes.Width)
        {
            var (a, b) = NormalScores.Words<TWords, TLanes>(first + (ulong)at, block, stream, seed);
            TWords.AsLanes(a).CopyTo(words.Slice(at, TLanes.Width));
            TWords.AsLanes(b).CopyTo(words.Slice(Draws + at, TLanes.Width));
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    private static void WriteScores(ReadOnlySpan<double> words, Span<double> cosines, Span<double> sines)
    {
        for (var at = 0; at < Draws; at += TLanes.Width)
        {
            var (cosine, sine) = NormalScores.Pair<TWords, TLanes>(TWords.BitsOf(TLanes.Load(words.Slice(at, TLanes.Width))));
            cosine.CopyTo(cosines.Slice(at, TLanes.Width));
            sine.CopyTo(sines.Slice(at, TLanes.Width));
        }
    }
}
