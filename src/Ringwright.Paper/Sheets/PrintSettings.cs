using System.Globalization;
using Ringwright.Core;
using Ringwright.Core.Measures;
using Ringwright.Paper.JobSheets;
using Ringwright.Paper.Labels;

namespace Ringwright.Paper.Sheets;

/// <summary>One of the ways in which a person usually prints. It is of the printer and its owner, not of a piece.</summary>
public sealed class PrintSetting
{
    private readonly Action<string> _read;

    internal PrintSetting(string name, string says, string example, Action<string> read) => (Name, Says, Example, _read) = (name, says, example, read);

    /// <summary>Its name among the settings that are kept.</summary>
    public string Name { get; }

    /// <summary>What it says, for a list.</summary>
    public string Says { get; }

    /// <summary>A value it can have.</summary>
    public string Example { get; }

    /// <summary>Checks a value.</summary>
    /// <exception cref="BadInputException">It cannot be.</exception>
    public void Check(string value)
    {
        ArgumentNullException.ThrowIfNull(value);
        _read(value);
    }
}

/// <summary>How a person usually prints: what app and command line keep beside the pieces.</summary>
public static class PrintSettings
{
    /// <summary>What all their names begin with.</summary>
    public const string Prefix = "print.";

    /// <summary>Name of the paper.</summary>
    public const string Paper = Prefix + "paper";

    /// <summary>Name of the printer's correction.</summary>
    public const string Correction = Prefix + "correction";

    /// <summary>Name of printing on both sides.</summary>
    public const string Duplex = Prefix + "duplex";

    /// <summary>The value of what is on or off, when it is on; off it is not kept at all.</summary>
    public const string On = "yes";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<PrintSetting> All { get; } =
    [
        Of("paper", "paper", "a4", v => PaperSize.Read(v, LengthUnit.Millimetre, Paper)),
        Of("correction", "correction of true-scale outlines, across and down", "99.7 mm,100.2 mm", v => PrintCorrection.Read(v, Correction)),
        Of("duplex", "both sides of the paper", On, v => YesOnly("duplex", v)),
        Of("sheets", "which sheets of the job packet", "cover,rings", v => PacketOptions.ReadSheets(v)),
        Of("kinds", "which templates", "wedge,disc", v => Templates.Template.Read(v)),
        Of("grid", "stickers across and down a sheet", "3x7", v => LabelGrid.Read(v, null, null, LengthUnit.Millimetre, Prefix)),
        Of("margins", "margins of a sheet of stickers, sides and top", "10 mm,12 mm", v => LabelGrid.Read(null, v, null, LengthUnit.Millimetre, Prefix)),
        Of("gaps", "gaps between stickers, across and down", "3 mm,2 mm", v => LabelGrid.Read(null, null, v, LengthUnit.Millimetre, Prefix)),
        Of("skip", "stickers of the first sheet that are used already", "4", Count),
        Of("outlines", "the stickers’ edges drawn", On, v => YesOnly("outlines", v)),
    ];

    /// <summary>The one of a name.</summary>
    /// <exception cref="BadInputException">There is none.</exception>
    public static PrintSetting Named(string name) => All.FirstOrDefault(s => s.Name == name)
        ?? throw new BadInputException("setting", $"there is none called “{name}”", $"one of these is needed: {string.Join(", ", All.Select(s => s.Name))}");

    private static PrintSetting Of(string name, string says, string example, Action<string> read) => new(Prefix + name, says, example, read);

    private static void YesOnly(string name, string value)
    {
        if (value != On) throw new BadInputException(Prefix + name, $"“{value}” cannot be", "yes or no is needed");
    }

    private static void Count(string value)
    {
        if (!int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out _)) throw new BadInputException(Prefix + "skip", $"“{value}” is no number of stickers", "such as 4 is needed");
    }
}
