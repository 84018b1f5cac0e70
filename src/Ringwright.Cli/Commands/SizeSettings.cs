using System.ComponentModel;
using Ringwright.Cli.Output;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary>The sizes of one ring, told on the command line.</summary>
internal class SizeSettings : UnitSettings
{
    [CommandOption("--segments <N>")]
    [Description("Segments around.")]
    public int? Segments { get; init; }

    [CommandOption("--diameter <LENGTH>")]
    [Description("Diameter to be turned.")]
    public string? Diameter { get; init; }

    [CommandOption("--inner <LENGTH>")]
    [Description("Inner diameter of a ring.")]
    public string? Inner { get; init; }

    [CommandOption("--thickness <LENGTH>")]
    [Description("Height of the ring.")]
    public string? Thickness { get; init; }

    [CommandOption("--allowance <LENGTH>")]
    [Description("Wood left on the radius for turning.")]
    public string? Allowance { get; init; }

    [CommandOption("--tip <LENGTH>")]
    [Description("Flat tip of a disc's wedges.")]
    public string? Tip { get; init; }

    [CommandOption("--bore <LENGTH>")]
    [Description("Hole bored through a disc.")]
    public string? Bore { get; init; }

    /// <summary>The options of this ring that were given.</summary>
    public bool HasSizes => Segments is not null || new[] { Diameter, Inner, Thickness, Allowance, Tip, Bore }.Any(s => s is not null);

    /// <summary>A disc of these sizes; what was not told is as usual.</summary>
    public WedgeDisc Disc(LengthUnit unit, params string[] woods) => new()
    {
        Name = "Disc",
        Segments = Segments ?? 24,
        Diameter = Read("--diameter", Diameter, "19 mm", unit),
        Thickness = Read("--thickness", Thickness, "30 mm", unit),
        Allowance = Read("--allowance", Allowance, "0 mm", unit),
        Tip = Optional("--tip", Tip, unit),
        Bore = Optional("--bore", Bore, unit),
        Woods = [.. woods],
    };

    /// <summary>A ring with an opening of these sizes; what was not told is as usual.</summary>
    public SegmentRing Open(LengthUnit unit, params string[] woods) => new()
    {
        Name = "Ring",
        Segments = Segments ?? 24,
        Diameter = Read("--diameter", Diameter, "120 mm", unit),
        InnerDiameter = Read("--inner", Inner, "90 mm", unit),
        Thickness = Read("--thickness", Thickness, "18 mm", unit),
        Allowance = Optional("--allowance", Allowance, unit),
        Woods = [.. woods],
    };

    private static Length? Optional(string option, string? text, LengthUnit unit) => text is null ? null : Read(option, text, text, unit);

    private static Length Read(string option, string? text, string otherwise, LengthUnit unit) =>
        TypedText.Length(option, text ?? otherwise, unit, "lengths are written like 19 mm or 3/4 in");
}
