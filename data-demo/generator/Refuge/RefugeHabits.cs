using NodaTime;

namespace AlderWeir;

/// <summary>What the refuge's guests and its own lamps and radio want: open every day from June to September, at weekends in spring and autumn.</summary>
internal sealed class RefugeHabits(Draw draw)
{
    internal double WantedW(int half, LocalDateTime local)
    {
        const double RadioAndFrost = 55;
        if (!IsOpen(local.Date)) return RadioAndFrost;
        var guests = draw.Between(Stream.RefugeGuests, local.Date.DayOfYear + (400L * local.Year), 0.4, 1.5);
        var activityW = local.Hour switch
        {
            >= 6 and < 9 => 610,
            >= 12 and < 14 => 480,
            >= 17 and < 22 => 790,
            _ => 130,
        };
        return RadioAndFrost + 60 + (activityW * guests * draw.Between(Stream.RefugeLevel, half, 0.6, 1.4));
    }

    private static bool IsOpen(LocalDate day) => day.Month switch
    {
        >= 6 and <= 9 => true,
        3 or 4 or 5 or 10 => day.DayOfWeek is IsoDayOfWeek.Friday or IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday,
        _ => false,
    };
}
