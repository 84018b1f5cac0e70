namespace Ringwright.Web.Floor;

/// <summary>What the marks of one kind of wedge come to. The tablet's page counts by the same rules.</summary>
/// <param name="Good">Good wedges.</param>
/// <param name="Lost">Wedges that were lost, at once or later.</param>
/// <param name="Cuts">Cuts that made a wedge.</param>
/// <param name="InBoard">Of these in the board at hand.</param>
/// <param name="NewCuts">Cuts that are not in the record yet.</param>
/// <param name="NewLost">Of these lost.</param>
/// <param name="Last">The mark that undo would take back; null when there is none.</param>
public sealed record CutTally(int Good, int Lost, int Cuts, int InBoard, int NewCuts, int NewLost, Mark? Last)
{
    /// <summary>Nothing marked yet.</summary>
    public static CutTally None { get; } = new(0, 0, 0, 0, 0, 0, null);

    /// <summary>Counts.</summary>
    /// <param name="marks">Marks of one ring, in any order.</param>
    /// <param name="cut">Which wedges.</param>
    public static CutTally Of(IEnumerable<Mark> marks, string cut)
    {
        ArgumentNullException.ThrowIfNull(marks);
        Mark[] mine = [.. marks.Where(m => m.Cut == cut).OrderBy(m => m.At).ThenBy(m => m.Id, StringComparer.Ordinal)];
        HashSet<string> back = [.. mine.Where(m => m.Kind == MarkKind.Undone && m.Of is not null).Select(m => m.Of!)];
        return mine.Where(m => m.Kind != MarkKind.Undone && !back.Contains(m.Id)).Aggregate(None, (tally, mark) => tally.With(mark));
    }

    /// <summary>Spare wedges that may still be lost.</summary>
    /// <param name="needed">Wedges in the ring.</param>
    /// <param name="toSaw">Wedges to saw, spares counted.</param>
    public int SparesLeft(int needed, int toSaw) => Math.Max(0, toSaw - needed - Lost);

    private CutTally With(Mark mark) => mark.Kind switch
    {
        MarkKind.Sawn => this with { Good = Good + 1, Cuts = Cuts + 1, InBoard = InBoard + 1, NewCuts = NewCuts + 1, Last = mark },
        MarkKind.Lost => this with { Lost = Lost + 1, Cuts = Cuts + 1, InBoard = InBoard + 1, NewCuts = NewCuts + 1, NewLost = NewLost + 1, Last = mark },
        MarkKind.Bad when Good > 0 => this with { Good = Good - 1, Lost = Lost + 1, NewLost = Math.Min(NewCuts, NewLost + 1), Last = mark },
        MarkKind.Board => this with { InBoard = 0, Last = mark },
        MarkKind.Recorded => this with { NewCuts = 0, NewLost = 0, Last = null },
        _ => this,
    };
}
