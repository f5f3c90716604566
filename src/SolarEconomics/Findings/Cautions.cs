namespace SolarEconomics;

/// <summary>The cautions that stand on results, each written once.</summary>
internal static class Cautions
{
    internal const string Money =
        "Not tax, legal, credit or investment advice. Savings are not income, and a forecast is not a promise. " +
        "Prices and rules differ by place and change: ask an adviser before deciding.";

    internal const string Records =
        "As good as the records: check a large or surprising number against the meter and the bills.";

    internal const string Panels =
        "Planning aid only. Direct current at these voltages can kill and start fires, roofs are fall hazards, and reused modules need tests. " +
        "Design and connection belong to a licensed electrician under the local wiring code; added capacity may need the network's and the insurer's consent.";

    internal const string Batteries =
        "Batteries can burn and give off gas; their fault currents reach thousands of amps and need protection rated for direct current. No mixed ages or chemistries, " +
        "no lithium charging below its temperature limit, ventilation for heat and gas; second-life cells may lack a certificate. Installation belongs to licensed people under the local code.";

    internal const string Backup =
        "A generator's exhaust kills: never indoors or near openings. Transfer switch and earthing belong to a licensed person, as backfeed kills line workers; store fuel by the local rules. " +
        "Export or added capacity without consent can end connection, insurance or a rate.";
}
