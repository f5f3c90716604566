namespace SolarEconomics;

internal static partial class HeaderWords
{
    /// <summary>Words of meters and portals in other languages than English and German. Words that mean one thing in one language and another elsewhere are left out: such a flow stays unknown.</summary>
    /// <remarks>Common practice, no source.</remarks>
    private static readonly (FlowKind Flow, string[] Words)[] FlowWordsOfOtherLanguages =
    [
        (FlowKind.BatteryDischarge, ["décharge", "descarga", "scarica", "ontlading"]),
        (FlowKind.Export,
        [
            "teruglevering", "teruggeleverd", "immissione", "immissioni", "immessa", "inyección", "inyeccion", "excedente", "excedentes", "injeção", "injecção", "injetada", "injectée",
            "oddanie", "oddana", "oddane", "inmatning", "売電", "売電量", "売電電力量",
        ]),
        (FlowKind.Import, ["prelievo", "prelievi", "prelevata", "soutirage", "soutirée", "prélèvement", "pobór", "pobrana", "pobrane", "uttag", "買電", "買電量", "買電電力量"]),
        (FlowKind.Generation,
        [
            "produzione", "prodotta", "producción", "produccion", "generación", "generacion", "produção", "geração", "produite", "opwek", "opbrengst", "opgewekt", "opgewekte",
            "produkcja", "produkcji", "発電", "発電量", "発電電力量",
        ]),
        (FlowKind.Use, ["consumo", "consumi", "consommation", "consommée", "verbruik", "förbrukning", "forbruk", "forbrug", "zużycie", "消費", "消費量", "消費電力量"]),
    ];
}
