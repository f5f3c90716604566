namespace SolarEconomics.Charts;

/// <summary>Room around the plot for axis text and legend. Unit: heights of the small text.</summary>
/// <param name="Left">For the tick labels of the value axis.</param>
/// <param name="Below">For the tick labels of the other axis.</param>
/// <param name="Above">For a legend, beside the unit that always stands there.</param>
internal readonly record struct Room(double Left, double Below, double Above = 0);
