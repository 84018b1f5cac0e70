using Microsoft.AspNetCore.Components;
using Ringwright.Core.Planning;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Sheets;

namespace Ringwright.Web.Printing;

/// <summary>All papers and files of the piece on the bench.</summary>
public partial class PrintPage
{
    /// <summary>Its address.</summary>
    public const string Address = "/print";

    /// <summary>Only this ring; all when absent, or when the piece on the bench has none of the name.</summary>
    [SupplyParameterFromQuery(Name = "ring")]
    public string? OnlyRing { get; set; }

    private ImmutableArray<(string Value, string Label)> Papers => [("", $"As usual: {(Query with { Paper = null }).PaperFor(Sheet).Name}"), ("a4", "A4"), ("letter", "Letter")];

    private PrintQuery Query => Choices.Query with { Ring = Sheet.Good.Rings.Any(r => r.Ring.Name == OnlyRing) ? OnlyRing : null };

    private RingPlan Ring => Query.Ring is null ? Sheet.Ring : PrintQuery.RingOf(Sheet.Good, Query.Ring);

    private string OfRing => Query.Ring is null ? "" : $", {Query.Ring}";

    private static string Mark(ChangeEventArgs change) => change.Value is true ? PrintSettings.On : "";

    private ImmutableArray<string> Chosen(string list) => [.. Choices[list].Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];

    private string At(string file, params ReadOnlySpan<string> names) => Query.At($"{PieceEndpoints.Files}/{file}", names);

    private string ViewAt(PlanView view, string ending) => (Query with { Ring = view.OfRing ? Ring.Ring.Name : null }).At($"{PieceEndpoints.Files}/views/{view.Name}{ending}", "ring");

    private void Look(string? ring) => Navigation.NavigateTo(string.IsNullOrEmpty(ring) ? Address : $"{Address}?ring={Uri.EscapeDataString(ring)}", replace: true);

    private void Tick(string list, string name, ChangeEventArgs change) => Choices.Set(list, string.Join(',', change.Value is true ? Chosen(list).Add(name) : Chosen(list).Remove(name)));
}
