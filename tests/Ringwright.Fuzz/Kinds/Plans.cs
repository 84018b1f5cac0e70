using System.Text.RegularExpressions;
using System.Xml;
using Ringwright.Core;
using Ringwright.Core.Boards;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Turning;
using Ringwright.Fuzz.Making;
using Ringwright.Fuzz.Running;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.JobSheets;
using Ringwright.Paper.Output;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Sheets;
using Ringwright.Paper.Templates;

namespace Ringwright.Fuzz.Kinds;

/// <summary>Whole jobs: a random piece of any construction in a random shop, from the file to plan, glue-up, lathe, cost, solid, packet, pictures and templates.</summary>
public sealed partial class Plans : Kind
{
    private const char Between = '\u001e';
    private static readonly DateOnly Day = new(2026, 11, 30);

    public override string Name => "plans";

    public override string Ending => ".json";

    // The packet of sixty rings is a hundred pages.
    public override TimeSpan Slow => TimeSpan.FromSeconds(12);

    public override string Make(Dice dice) => DocumentJson.Write(PieceMaker.Piece(dice)) + Between + DocumentJson.Write(ShopMaker.Shop(dice));

    public override void Check(string input)
    {
        string[] parts = input.Split(Between);
        Piece piece = DocumentJson.ReadPiece(parts[0]);
        Shop shop = DocumentJson.ReadShop(parts[1]);
        Plan plan = Planner.Plan(piece, shop);
        PlanPromises.Check(plan);
        MeasureStyle style = MeasureStyle.For(piece.Units);
        Work(plan, style);
        Solid(plan);
        Paper(plan, style);
        Demand(plan);
    }

    public override IEnumerable<string> Simpler(string input)
    {
        string[] parts = input.Split(Between);
        string starting = DocumentJson.Write(Shop.Starting);
        if (parts[1] != starting && parts[1].Length > starting.Length) yield return parts[0] + Between + starting;
        foreach (string piece in JsonMutator.Without(parts[0])) yield return piece + Between + parts[1];
        foreach (string shop in JsonMutator.Without(parts[1])) yield return parts[0] + Between + shop;
    }

    private static void Work(Plan plan, MeasureStyle style)
    {
        CostPlan cost = CostPlan.Of(plan);
        Promise.That(double.IsFinite(cost.Minutes.Likely) && cost.Minutes.Likely > 0 && cost.Minutes.Low <= cost.Minutes.Likely && cost.Minutes.Likely <= cost.Minutes.High, "the work takes a time", $"{cost.Minutes}");
        LathePlan lathe = LathePlan.Of(plan);
        foreach (Figure figure in lathe.Figures) Promise.Finite(figure.Value, $"{figure.Name} at the lathe");
        PlanPromises.Texts(lathe.Steps.Concat(lathe.Doubts.Select(d => d.Sentence)).Select(s => s.In(style)), plan);
    }

    private static void Solid(Plan plan)
    {
        TurnedPiece turned;
        try
        {
            turned = plan.Turned();
        }
        catch (BadInputException)
        {
            return; // its rings do not fill the shape: told, and nothing to weigh
        }

        double[] densities = [.. turned.Woods.Select(_ => 700.0)];
        var mass = TurnedMass.Of(turned.Rings, densities);
        Promise.That(double.IsFinite(mass.Whole.Volume) && mass.Whole.Volume > 0, "the turned piece has a volume", $"{mass.Whole.Volume}");
        foreach (MassProperties part in mass.Segments.SelectMany(r => r)) Promise.That(double.IsFinite(part.Volume) && part.Volume >= -1e-6, "each turned segment has a volume", $"{part.Volume}");
        var mesh = TurnedMesh.Of(turned.Rings, Facets.Within(0.5));
        foreach (float coordinate in mesh.Positions) Promise.That(float.IsFinite(coordinate), "a mesh has numbers", $"{coordinate}");
    }

    private static void Demand(Plan plan)
    {
        foreach (StripDemand demand in StripDemands.Of(plan))
            Promise.That(double.IsFinite(demand.Width) && demand.Width > 0 && demand.Width < 1e5, "strips have a width", $"{demand}");
    }

    private static void Paper(Plan plan, MeasureStyle style)
    {
        Packet packet = JobSheet.Packet(plan, style, plan.Piece.Units == LengthUnit.Inch ? PaperSize.Letter : PaperSize.A4, Day);
        foreach (Drawing page in packet.Pages())
        {
            PlanPromises.Texts(page.TextBoxes.Select(t => t.Text), plan);
            foreach ((string text, Box box) in page.TextBoxes)
                Promise.That(double.IsFinite(box.X + box.Y + box.Width + box.Height) && box.X > -1 && box.Y > -1 && box.Right < page.Width + 1 && box.Bottom < page.Height + 1, "texts lie on their page", $"“{text}” at {box}");
        }

        foreach (RingPlan ring in plan.Rings.Take(2))
            foreach (PlanView view in PlanView.Of(plan, ring))
            {
                RingPlan shown = view.Name is "ring" || ring.Batches.IsEmpty ? ring : ring.Alone(0);
                Svg(view.Draw(plan, shown, style, coloured: true), plan.Piece.Name, $"view {view.Name}", plan);
            }

        foreach (Template template in TemplateSet.Of(plan, style).Take(6))
        {
            Svg(template.Drawing, template.Name, $"template {template.Kind}", plan);
            string dxf = DxfWriter.Write(template.Drawing);
            string[] lines = dxf.Split("\r\n");
            Promise.That(!lines.Any(l => NoNumber().IsMatch(l)), "a DXF holds numbers", $"template {template.Name}");
            Promise.That(lines.Length % 2 == 1 && lines.Where((_, i) => i % 2 == 0).SkipLast(1).All(code => int.TryParse(code, System.Globalization.CultureInfo.InvariantCulture, out int c) && c is >= 0 and <= 1071), "a DXF is pairs of code and value", $"template {template.Name}");
        }
    }

    private static void Svg(Drawing drawing, string title, string what, Plan plan)
    {
        string svg = SvgWriter.Write(drawing, title);
        Match bad = NoNumberInside().Match(svg);
        Promise.That(!bad.Success || PlanPromises.Odd(plan), "an SVG holds numbers", $"{what}: …{(bad.Success ? svg[Math.Max(0, bad.Index - 60)..Math.Min(svg.Length, bad.Index + 20)] : "")}");
        try
        {
            using var reader = XmlReader.Create(new StringReader(svg), new() { DtdProcessing = DtdProcessing.Prohibit });
            while (reader.Read())
            {
            }
        }
        catch (XmlException e)
        {
            throw new BrokenPromiseException("an SVG is well-formed XML", $"{what}: {e.Message}");
        }
    }

    [GeneratedRegex(@"^\s*-?(NaN|Infinity|∞)\s*$")]
    private static partial Regex NoNumber();

    [GeneratedRegex("NaN|Infinity|∞")]
    private static partial Regex NoNumberInside();
}
