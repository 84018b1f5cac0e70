using Ringwright.Core;
using Ringwright.Core.Patterns;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Web.Bench;
using Ringwright.Web.Bench.Fields;

namespace Ringwright.Web.Stations;

/// <summary>A pattern in steps; shown on trial while it is made.</summary>
public partial class PatternStepsForm
{
    private bool _trying;
    private string? _wrong, _words;
    private (DeskTexts Desk, Plan Plan)? _tried;

    private int Count => PatternStepKind.CountOn(Sheet.Desk);

    /// <inheritdoc/>
    protected override bool ShouldRender()
    {
        Try();
        return base.ShouldRender();
    }

    private void Choose(int number, string? kind) => Bench.Note(PatternStepKind.NameOf(number, "kind"), kind ?? "");

    private void SetCount(int count) => Bench.Note("pattern.count", Codecs.Whole.Print(count));

    private void Toggle()
    {
        _trying = !_trying;
        if (!_trying) Look.Try(null);
        _tried = null;
    }

    // Whenever the steps or the piece changed.
    private void Try()
    {
        if (!_trying || (_tried is { } tried && ReferenceEquals(tried.Desk, Sheet.Desk) && ReferenceEquals(tried.Plan, Sheet.Good))) return;
        _tried = (Sheet.Desk, Sheet.Good);
        try
        {
            Look.Try(Planner.Plan(Painted(out _words), Sheet.Good.Shop));
            _wrong = null;
        }
        catch (BadInputException e)
        {
            _wrong = FieldProblem.Capital(e.Message);
            Look.Try(null);
        }
    }

    private Piece Painted(out string words)
    {
        Pattern pattern = PatternStepKind.Read(Sheet.Desk);
        Lattice lattice = PieceLattice.Of(Sheet.Good);
        words = string.Join(" ", [pattern.Describe(), .. pattern.Doubts(lattice).Take(3)]);
        return PieceLattice.Paint(Sheet.Good.Piece, pattern.On(lattice));
    }

    private void Lay()
    {
        try
        {
            Piece painted = Painted(out _words);
            _wrong = null;
            _trying = false;
            Look.Try(null);
            Bench.Change(w => w with { Piece = painted });
        }
        catch (BadInputException e)
        {
            _wrong = FieldProblem.Capital(e.Message);
        }
    }
}
