using NodaTime;

namespace SolarEconomics.Tests.GenerationRoom;

public sealed class SunTrackTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    [InlineData(15)]
    [InlineData(30)]
    [InlineData(60)]
    [InlineData(180)]
    public void The_joined_places_agree_with_the_full_series_at_every_step(int minutes)
    {
        var grid = new IntervalGrid(Instant.FromUtc(2024, 3, 19, 0, 0), Duration.FromMinutes(minutes), 5 * StepBlock.Size);
        var track = new SunTrack(53.2, -9.1, grid);
        var block = new StepBlock();
        for (var first = 0; first < grid.Count; first += StepBlock.Size)
        {
            track.Fill(first, block);
            for (var i = 0; i < StepBlock.Size; i += 7)
            {
                var sun = SolarCoordinates.At(grid.StartOf(first + i) + (grid.Step / 2));
                var direction = sun.DirectionFrom(53.2, -9.1);
                Assert.Equal(direction.East, block.East[i], 1e-10);
                Assert.Equal(direction.North, block.North[i], 1e-10);
                Assert.Equal(direction.Up, block.Up[i], 1e-10);
                Assert.Equal(sun.ExtraterrestrialNormalWm2, block.ExtraterrestrialWm2[i], 1e-7);
            }
        }
    }

    [Fact]
    public void Blocks_taken_out_of_order_give_the_same_sun()
    {
        var grid = new IntervalGrid(Instant.FromUtc(2024, 3, 19, 0, 0), Duration.FromMinutes(5), 4 * StepBlock.Size);
        var (straight, jumping) = (new StepBlock(), new StepBlock());
        var track = new SunTrack(53.2, -9.1, grid);
        for (var first = 0; first <= 2 * StepBlock.Size; first += StepBlock.Size) track.Fill(first, straight);
        new SunTrack(53.2, -9.1, grid).Fill(2 * StepBlock.Size, jumping);
        Assert.Equal(straight.Up, jumping.Up);
        Assert.Equal(straight.East, jumping.East);
    }
}
