namespace Ringwright.Web.Floor;

/// <summary>What the marks of one kind of wedge come to. The tablet's page counts by the same rules.</summary>
/// <param name="Good">Good wedges.</param>
/// <param name="Lost">Wedges that were lost, at once or later.</param>
/// <param name="InBoard">Wedges that fell of the board at hand.</param>
/// <param name="NewCuts">Cuts that are not in the record yet.</param>
/// <param name="NewLost">Of these lost.</param>
/// <param name="Last">The mark that undo would take back; null when there is none.</param>
public sealed record CutTally(int Good, int Lost, int InBoard, int NewCuts, int NewLost, Mark? Last)
{
    /// <summary>Nothing marked yet.</summary>
    public static CutTally None { get; } = new(0, 0, 0, 0, 0, null);

    /// <summary>Wedges that were sawn.</summary>
    public int Sawn => Good + Lost;

    /// <summary>Counts. Neither the order in which marks arrive nor sending one twice matters.</summary>
    /// <param name="marks">Marks of one ring, in any order.</param>
    /// <param name="cut">Which wedges.</param>
    public static CutTally Of(IEnumerable<Mark> marks, string cut)
    {
        ArgumentNullException.ThrowIfNull(marks);
        Mark[] mine = [.. marks.Where(m => m.Cut == cut).DistinctBy(m => m.Id).OrderBy(m => m.At).ThenBy(m => m.Id, StringComparer.Ordinal)];
        var standing = new StandingMarks(mine);
        return mine.Where(m => m.Kind != MarkKind.Undone && standing.Stands(m)).Aggregate(default(Sums), (sums, mark) => sums.With(mark)).Tally;
    }

    /// <summary>Spare wedges that may still be lost.</summary>
    /// <param name="needed">Wedges in the ring.</param>
    /// <param name="toSaw">Wedges to saw, spares counted.</param>
    public int SparesLeft(int needed, int toSaw) => Math.Max(0, toSaw - needed - Lost);

    // What is in the record is told as numbers, so that a tablet's cuts that arrive later are not taken for recorded ones.
    private readonly record struct Sums(int Good, int Lost, int InBoard, int Cuts, int LostEver, int Recorded, int RecordedLost, Mark? Last)
    {
        public CutTally Tally
        {
            get
            {
                int cuts = Math.Max(0, Cuts - Recorded);
                return new(Good, Lost, InBoard, cuts, Math.Clamp(LostEver - RecordedLost, 0, cuts), Last);
            }
        }

        public Sums With(Mark mark) => mark.Kind switch
        {
            MarkKind.Sawn => this with { Good = Good + 1, Cuts = Cuts + 1, InBoard = InBoard + 1, Last = mark },
            MarkKind.Lost => this with { Lost = Lost + 1, LostEver = LostEver + 1, Cuts = Cuts + 1, InBoard = InBoard + 1, Last = mark },
            MarkKind.Bad when Good > 0 => this with { Good = Good - 1, Lost = Lost + 1, LostEver = LostEver + 1, Last = mark },
            MarkKind.Board => this with { InBoard = 0, Last = mark },
            MarkKind.Cleared => this with { Good = 0, Lost = 0, InBoard = 0, Last = mark },
            MarkKind.Recorded => this with { Recorded = mark.Cuts is int cuts ? Recorded + cuts : Cuts, RecordedLost = mark.Lost is int lost ? RecordedLost + lost : LostEver, Last = null },
            _ => this,
        };
    }

    // A mark stands unless one that takes it back stands. Clocks of devices differ, so their times decide nothing here.
    private sealed class StandingMarks(Mark[] marks)
    {
        private readonly ILookup<string, Mark> _undoing = marks.Where(m => m.Kind == MarkKind.Undone && m.Of is not null).ToLookup(m => m.Of!);
        private readonly Dictionary<string, bool> _known = [];

        public bool Stands(Mark mark)
        {
            if (_known.TryGetValue(mark.Id, out bool stands)) return stands;
            // What goes in a circle takes nothing back.
            _known[mark.Id] = false;
            return _known[mark.Id] = !_undoing[mark.Id].Any(Stands);
        }
    }
}
