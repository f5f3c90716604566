using System.Runtime.CompilerServices;

namespace SolarEconomics;

/// <summary>A counter-based generator: the words of a draw follow from seed, draw, block and stream alone, so any order, chunk, thread or vector width gives the same.</summary>
/// <remarks>Philox4x32 with ten rounds. Source: stat-7. Each 64-bit word here carries one of its 32-bit words in the lower half; the upper half may hold
/// what a product left there and is never read.</remarks>
internal static class Philox
{
    private const int Rounds = 10;
    private const ulong MultiplierA = 0xD2511F53;
    private const ulong MultiplierB = 0xCD9E8D57;
    private const uint StepA = 0x9E3779B9;
    private const uint StepB = 0xBB67AE85;

    /// <summary>The four words of a counter under a key, in the lower halves.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static (TWords C0, TWords C1, TWords C2, TWords C3) Block<TWords, TLanes>(TWords c0, TWords c1, TWords c2, TWords c3, uint keyA, uint keyB)
        where TWords : struct, IWords<TWords, TLanes>
        where TLanes : struct, ILanes<TLanes>
    {
        var (multiplierA, multiplierB) = (TWords.Of(MultiplierA), TWords.Of(MultiplierB));
        var (roundKeyA, roundKeyB) = (TWords.Of(keyA), TWords.Of(keyB));
        // Two rounds to a turn: the words then change places twice and stand where they stood, so none has to be moved.
        for (var round = 0; round < Rounds; round += 2)
        {
            var a = TWords.MultiplyLowerHalves(c0, multiplierA);
            var b = TWords.MultiplyLowerHalves(c2, multiplierB);
            var d0 = TWords.ShiftRight(b, 32) ^ c1 ^ roundKeyA;
            var d2 = TWords.ShiftRight(a, 32) ^ c3 ^ roundKeyB;
            roundKeyA += TWords.Of(StepA);
            roundKeyB += TWords.Of(StepB);
            c3 = TWords.MultiplyLowerHalves(d0, multiplierA);
            c1 = TWords.MultiplyLowerHalves(d2, multiplierB);
            c0 = TWords.ShiftRight(c1, 32) ^ b ^ roundKeyA;
            c2 = TWords.ShiftRight(c3, 32) ^ a ^ roundKeyB;
            roundKeyA += TWords.Of(StepA);
            roundKeyB += TWords.Of(StepB);
        }
        return (c0, c1, c2, c3);
    }
}
