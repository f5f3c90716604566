namespace SolarEconomics.Tests;

/// <summary>Known answers of Philox4x32-10 as its authors publish them with the generator (Random123, kat_vectors); from memory.</summary>
public sealed class PhiloxTests
{
    public static TheoryData<uint[], uint[], uint[]> KnownAnswers => new()
    {
        { [0, 0, 0, 0], [0, 0], [0x6627e8d5, 0xe169c58d, 0xbc57ac4c, 0x9b00dbd8] },
        { [uint.MaxValue, uint.MaxValue, uint.MaxValue, uint.MaxValue], [uint.MaxValue, uint.MaxValue], [0x408f276d, 0x41c83b0e, 0xa20bc7c6, 0x6d5451fd] },
        { [0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344], [0xa4093822, 0x299f31d0], [0xd16cfe09, 0x94fdcceb, 0x5001e420, 0x24126ea1] },
    };

    [Theory, MemberData(nameof(KnownAnswers))]
    public void A_block_agrees_with_the_known_answer(uint[] counter, uint[] key, uint[] answer)
    {
        var (a, b, c, d) = Philox.Block<Words1, Lanes1>(Words1.Of(counter[0]), Words1.Of(counter[1]), Words1.Of(counter[2]), Words1.Of(counter[3]), key[0], key[1]);
        Assert.Equal(answer, new[] { (uint)a.Value, (uint)b.Value, (uint)c.Value, (uint)d.Value });
    }

    [Fact]
    public void Every_width_gives_each_draw_the_same_bits()
    {
        const ulong first = 0xFFFF_FFF0; // The draw's number runs over 32 bits within the lanes.
        for (var block = 0u; block < 50; block++)
        {
            var alone = Enumerable.Range(0, 8).Select(lane => Scores(first + (ulong)lane, block)).ToArray();
            var four = Lanes(NormalScores.Four<Words4, Lanes4>(first, block, 7, 99), 4);
            var eight = Lanes(NormalScores.Four<Words8, Lanes8>(first, block, 7, 99), 8);
            for (var lane = 0; lane < 8; lane++)
            {
                Assert.Equal(alone[lane], eight[lane]);
                if (lane < 4) Assert.Equal(alone[lane], four[lane]);
            }
        }
    }

    private static double[] Scores(ulong draw, uint block)
    {
        var (a, b, c, d) = NormalScores.Four<Words1, Lanes1>(draw, block, 7, 99);
        return [a.Value, b.Value, c.Value, d.Value];
    }

    private static double[][] Lanes<TLanes>((TLanes A, TLanes B, TLanes C, TLanes D) four, int width)
        where TLanes : struct, ILanes<TLanes>
    {
        var found = Enumerable.Range(0, width).Select(_ => new double[4]).ToArray();
        TLanes[] all = [four.A, four.B, four.C, four.D];
        var values = new double[width];
        for (var k = 0; k < 4; k++)
        {
            all[k].CopyTo(values);
            for (var lane = 0; lane < width; lane++) found[lane][k] = values[lane];
        }
        return found;
    }
}
