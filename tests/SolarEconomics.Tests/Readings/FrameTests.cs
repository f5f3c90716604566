namespace SolarEconomics.Tests;

public sealed class FrameTests
{
    [Fact]
    public void A_frame_goes_out_and_comes_back_with_the_same_values()
    {
        var site = Site.At("Test", -33, 151, "Australia/Sydney", "AUD");
        var first = Readings.Load(TestFiles.Sample("espi-hourly-march-2011.xml"), site);
        var frame = first.ToFrame();
        frame.RenameColumns(_ => "grid import (kWh)");
        var second = Readings.FromFrame(frame);
        var (a, b) = (Assert.Single(first.Channels), Assert.Single(second.Channels));
        Assert.Equal(FlowKind.Import, b.Flow);
        Assert.True(a.Starts.SequenceEqual(b.Starts) && a.Ends.SequenceEqual(b.Ends) && a.Kwh.SequenceEqual(b.Kwh));
    }
}
