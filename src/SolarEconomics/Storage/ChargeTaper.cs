namespace SolarEconomics;

/// <summary>How charging slows near full: from a charge level on, the most power falls on a straight line to what is left of it at full.</summary>
/// <param name="FromShare">Share of the usable energy at which it begins. Range: 0 to below 1.</param>
/// <param name="PowerLeftAtFull">Share of the most power that is left at full. Range: a millionth to 1.</param>
/// <remarks>Worked out exactly inside an interval, so that one hour and twelve times five minutes of charging at the most power end at the same charge. A surplus
/// below the most power is judged by the interval as a whole: a long one may take a little near full that short ones would refuse.</remarks>
public sealed record ChargeTaper(double FromShare, double PowerLeftAtFull)
{
    /// <summary>Share of the usable energy at which it begins.</summary>
    public double FromShare { get; init => field = Require.Within(value, 0, 0.999, "a share of the usable energy", nameof(FromShare)); } = Require.Within(FromShare, 0, 0.999, "a share of the usable energy", nameof(FromShare));

    /// <summary>Share of the most power that is left at full.</summary>
    public double PowerLeftAtFull { get; init => field = Require.Within(value, 1e-6, 1, "a share of the most power", nameof(PowerLeftAtFull)); } = Require.Within(PowerLeftAtFull, 1e-6, 1, "a share of the most power", nameof(PowerLeftAtFull));

    /// <summary>The taper with which the stretch from its beginning to full takes some hours.</summary>
    /// <param name="fromShare">Share of the usable energy at which it begins.</param>
    /// <param name="usableKwh">Stored at full. Unit: kWh.</param>
    /// <param name="powerKw">The most power into the cells below the taper. Unit: kW.</param>
    /// <param name="hours">Hours from its beginning to full. Unit: h.</param>
    /// <remarks>Equation: hours = span / P · ln(1/r) / (1 − r), solved for the power left r by halving; where even a steady power takes longer, r is 1,
    /// and never below a millionth.</remarks>
    internal static ChargeTaper Lasting(double fromShare, double usableKwh, double powerKw, double hours)
    {
        const double Least = 1e-6;
        var atFullPower = (1 - fromShare) * usableKwh / powerKw;
        double HoursWith(double left) => atFullPower * -Math.Log(left) / (1 - left);
        if (hours <= atFullPower) return new ChargeTaper(fromShare, 1);
        var (low, high) = (Least, 1 - 1e-9);
        for (var k = 0; k < 60 && high - low > 1e-12; k++)
        {
            var middle = (low + high) / 2;
            (low, high) = HoursWith(middle) > hours ? (middle, high) : (low, middle);
        }
        return new ChargeTaper(fromShare, high);
    }

    /// <summary>The most energy that can reach the cells in a stretch of time.</summary>
    /// <param name="storedKwh">Stored at its start. Unit: kWh.</param>
    /// <param name="usableKwh">Stored at full. Unit: kWh.</param>
    /// <param name="powerKw">The most power into the cells below the taper. Unit: kW.</param>
    /// <param name="hours">Length. Unit: h.</param>
    /// <remarks>Equation: below the knee ds/dt = P; above it ds/dt = P·(1 − (1 − r)·(s − k)/(U − k)), an exponential; never above U.</remarks>
    internal double MostIntoCells(double storedKwh, double usableKwh, double powerKw, double hours)
    {
        var roomKwh = Math.Max(0, usableKwh - storedKwh);
        if (roomKwh == 0 || powerKw == 0) return 0;
        if (double.IsPositiveInfinity(powerKw)) return roomKwh;
        var kneeKwh = FromShare * usableKwh;
        var beforeKneeKwh = Math.Max(0, kneeKwh - storedKwh);
        if (powerKw * hours <= beforeKneeKwh) return powerKw * hours;
        var left = hours - (beforeKneeKwh / powerKw);
        var spanKwh = usableKwh - kneeKwh;
        var fall = powerKw * (1 - PowerLeftAtFull) / spanKwh;
        var startKw = powerKw * (1 - ((1 - PowerLeftAtFull) * Math.Max(0, storedKwh - kneeKwh) / spanKwh));
        var aboveKneeKwh = fall * left < 1e-12 ? startKw * left : startKw * -Growth.ExpMinusOne(-fall * left) / fall;
        return Math.Min(roomKwh, beforeKneeKwh + aboveKneeKwh);
    }
}
