namespace SolarEconomics;

/// <summary>Credit that is not paid out: a bill below zero becomes zero, and what is left over lowers later bills or is lost.</summary>
/// <param name="Name">Name on the bill.</param>
/// <param name="IsCarried">Whether later bills take the credit; otherwise it is lost.</param>
/// <param name="ExpiresInMonth">Month at whose first bill what was carried is lost, 1 to 12; <see langword="null"/>: never.</param>
/// <remarks>Stands last among the parts, since it looks at the whole bill with its tax.</remarks>
public sealed record CreditKept(string Name, bool IsCarried = true, int? ExpiresInMonth = null) : TariffPart(Name)
{
    internal override SegmentPart On(SegmentContext context) => new SegmentCreditKept(this, context);

    internal override IEnumerable<TariffMistake> Mistakes(Tariff tariff, DayCalendar calendar)
    {
        if (!ReferenceEquals(tariff.Parts[^1], this)) yield return Throw.CreditNotLast(tariff, this);
    }
}
