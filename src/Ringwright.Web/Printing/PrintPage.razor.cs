using Microsoft.AspNetCore.Components;
using Ringwright.Core.Planning;
using Ringwright.Paper.Pictures;

namespace Ringwright.Web.Printing;

/// <summary>All papers and files of the piece on the bench. What is chosen is kept on the desk.</summary>
public partial class PrintPage
{
    /// <summary>Its address.</summary>
    public const string Address = "/print";

    private static readonly ImmutableArray<(string Value, string Label)> Papers = [("", "As usual"), ("a4", "A4"), ("letter", "Letter")];

    private PrintQuery Query => PrintQuery.On(Sheet);

    private RingPlan Ring => Query.Ring is null ? Sheet.Ring : PrintQuery.RingOf(Sheet.Good, Query.Ring);

    private string OfRing => Query.Ring is null ? "" : $", {Query.Ring}";

    private ImmutableArray<string> Chosen => Sheet.Desk.List(PrintQuery.DeskPrefix + "sheets");

    private static string Mark(ChangeEventArgs change) => change.Value is true ? "yes" : "";

    private string Text(string name) => Sheet.Desk[PrintQuery.DeskPrefix + name];

    private string At(string file, params ReadOnlySpan<string> names) => Query.At($"{PieceEndpoints.Files}/{file}", names);

    private string ViewAt(PlanView view, string ending) => (Query with { Ring = view.OfRing ? Ring.Ring.Name : null }).At($"{PieceEndpoints.Files}/views/{view.Name}{ending}", "ring");

    private void Note(string name, string text) => Bench.Note(PrintQuery.DeskPrefix + name, text);

    private void Tick(string name, ChangeEventArgs change) => Note("sheets", string.Join(',', change.Value is true ? Chosen.Add(name) : Chosen.Remove(name)));
}
