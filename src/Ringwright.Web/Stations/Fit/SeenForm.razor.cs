using Ringwright.Core;
using Ringwright.Core.Fitting;
using Ringwright.Core.Pieces;
using Ringwright.Web.Bench;
using Ringwright.Web.Floor;

namespace Ringwright.Web.Stations;

/// <summary>Enters what is seen on a dry ring.</summary>
public partial class SeenForm
{
    private string _kind = "gathered", _end = "rim", _level = "";
    private string? _problem;

    private string? _said;

    private FitDesk Desk => new(Sheet);

    // The ring as a closure; null when nothing that was read is one.
    private LoggedClosure? Closure
    {
        get
        {
            try
            {
                return ReadClosure.Of(Sheet.Ring, Sheet.Good.Shop.Sled, Desk.Observations());
            }
            catch (BadInputException)
            {
                // The answer above says it.
                return null;
            }
        }
    }

    private string Recorded => $"recorded | {Sheet.MarkOf(Sheet.Ring)} | {string.Join("; ", Desk.Seen)}";

    private bool IsRecorded => IsDone(Recorded);

    /// <summary>The form as one reading, in the words of the shell.</summary>
    internal static string Text(string kind, string joint, string end, string level, string gap, string sure)
    {
        string about = string.IsNullOrWhiteSpace(sure) ? "" : $" ± {sure.Trim()}";
        string at = level.Length > 0 ? $"{end} {level}" : end;
        return kind switch
        {
            "wedge" => $"wedge {gap.Trim()}{about}",
            "half" => $"half {end} {gap.Trim()}{about}",
            "joint" => $"joint {joint.Trim()} {at} {gap.Trim()}{about}",
            _ => $"gathered {at} {gap.Trim()}{about}",
        };
    }

    private void Add()
    {
        try
        {
            string text = Text(_kind, Sheet.Desk["fit.joint"], _end, _level, WithUnit(Sheet.Desk["fit.gap"]), WithUnit(Sheet.Desk["fit.sure"]));
            ReadingText.Read(text, "what you see", Sheet.Units.Unit());
            string name = Desk.Name("seen");
            Bench.Change(s => s with { Desk = s.Desk.With(name, string.Join('\n', [.. Desk.Seen, text])).With("fit.gap", "").With("fit.sure", "").With("fit.joint", "") });
            _problem = null;
        }
        catch (BadInputException e)
        {
            _problem = e.Message;
        }
    }

    // Ticked off with it, so that one ring teaches once.
    private void Record()
    {
        if (Closure is not { } closure || IsRecorded) return;
        string tick = FloorNames.Tick(Numbers.Own(), Recorded), name = Sheet.Ring.Ring.Name;
        _said = Floor.Record(
            new() { Sled = Sheet.Good.Shop.Sled.Kind, Closures = [closure], Note = $"{Sheet.Good.Piece.Name}, {name}" },
            $"dry ring added to the record: {name}",
            By,
            s => s with { Ticks = s.Ticks.Add(tick) });
    }

    private void Remove(int index)
    {
        string name = Desk.Name("seen"), rest = string.Join('\n', Desk.Seen.RemoveAt(index));
        Bench.Change(s => s with { Desk = s.Desk.With(name, rest) });
    }

    // Kept with its unit, so that it means the same when the lengths are shown in another.
    private string WithUnit(string text) => _kind != "wedge" && text.Trim() is { Length: > 0 } typed && char.IsAsciiDigit(typed[^1])
        ? $"{typed} {(Sheet.Units.Unit() == Core.Measures.LengthUnit.Inch ? "in" : "mm")}"
        : text;
}
