using System.ComponentModel;
using Ringwright.Cli.Output;
using Ringwright.Core;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary>How a stack of rings is to be found, as options that two commands share.</summary>
internal static class StackOptions
{
    public const string Heights = "Finished ring heights that the boards at hand give, separated by commas, such as \"18 mm, 25 mm\".";
    public const string RimEdge = "Longest rim edge wanted when --segments is not given; 25 mm otherwise.";
    public const string Extra = "Share of extra wood accepted for ripping fewer widths, 0 to 1; 0.05 otherwise.";

    private const string Right = "lengths are written like 18 mm or 3/4 in, separated by commas";

    /// <summary>The request that these options make of a shape.</summary>
    public static StackRequest Request(Shape shape, LengthUnit unit, string heights, int? segments, string? rimEdge, double? extra, IEnumerable<string> woods)
    {
        var request = new StackRequest
        {
            Shape = shape,
            Heights = [.. heights.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(h => TypedText.Length("--heights", h, unit, Right).Millimetres)],
            Segments = segments,
            Woods = [.. woods],
        };
        if (rimEdge is not null) request = request with { RimEdge = TypedText.Length("--rim-edge", rimEdge, unit, Right).Millimetres };
        if (extra is double share)
            request = share is >= 0 and <= 1 ? request with { ExtraWood = share } : throw new BadInputException("--extra-wood", "it is no share", "a number from 0 to 1 is needed");
        return request;
    }
}

/// <summary>Options of <c>stack</c>.</summary>
internal sealed class StackSettings : ShopSettings
{
    [CommandArgument(0, "<FILE>")]
    [Description("The piece's file; it must have a shape.")]
    public string File { get; init; } = "";

    [CommandOption("--heights <LIST>", true)]
    [Description(StackOptions.Heights)]
    public string Heights { get; init; } = "";

    [CommandOption("--segments <N>")]
    [Description("Segments in every ring; otherwise by the rim edge.")]
    public int? Segments { get; init; }

    [CommandOption("--rim-edge <LENGTH>")]
    [Description(StackOptions.RimEdge)]
    public string? RimEdge { get; init; }

    [CommandOption("--extra-wood <SHARE>")]
    [Description(StackOptions.Extra)]
    public double? Extra { get; init; }

    [CommandOption("--woods <LIST>")]
    [Description("Woods around every ring, separated by commas; they repeat. Otherwise those of the first ring.")]
    public string? Woods { get; init; }

    [CommandOption("-o|--out <FILE>")]
    [Description("The piece with the new rings; without it the stack is only shown.")]
    public string? Out { get; init; }
}
