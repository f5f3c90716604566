using NodaTime;

namespace AlderWeir;

/// <summary>One dated payment of the invented ledger, in EUR.</summary>
/// <param name="Day">Day on which it was paid.</param>
/// <param name="Kind">What kind of payment; decides whether the owner paid or received.</param>
/// <param name="Amount">Amount, positive.</param>
/// <param name="Device">Device of plant.json that it belongs to; empty for the whole plant.</param>
/// <param name="Description">What it was for.</param>
internal sealed record Receipt(LocalDate Day, string Kind, decimal Amount, string Device, string Description);
