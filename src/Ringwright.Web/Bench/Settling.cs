using Ringwright.Core;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Web.Bench.Fields;

namespace Ringwright.Web.Bench;

/// <summary>
/// Brings waiting texts into the plan as far as that can be: all that can be read together, else what was typed last by itself.
/// The rest waits, each with its reason.
/// </summary>
/// <param name="sheet">The sheet with its texts.</param>
/// <param name="typed">Addresses that were typed just now.</param>
internal sealed class Settling(Sheet sheet, string[] typed)
{
    private readonly LengthUnit _unit = sheet.Units.Unit();
    private readonly List<FieldProblem> _unreadable = [];
    private readonly List<(string Address, Lens Lens)> _readable = [];

    public Sheet Settle()
    {
        Read();
        if (_readable.Count == 0) return Result(sheet.Good, []);
        Work all = Put(_readable);
        if (Plan(all, out Plan? plan) is not BadInputException refusal) return Result(plan!, []);
        (string Address, Lens Lens)[] last = [.. _readable.Where(r => typed.Contains(r.Address))];
        if (last.Length > 0 && last.Length < _readable.Count && Plan(Put(last), out plan) is null) return Result(plan!, [.. _readable.Except(last)]);
        return Result(sheet.Good, _readable, refusal, all);
    }

    private void Read()
    {
        foreach ((string address, string text) in sheet.Texts)
        {
            // A field that is gone (its ring was removed) takes its text with it; undo brings both back.
            if (LensBook.Find(sheet.Work, address) is not Lens lens) continue;
            if (lens.Write(sheet.Work, text, _unit).Error is ParseError error) _unreadable.Add(FieldProblem.Of(address, error));
            else _readable.Add((address, lens));
        }
    }

    private Work Put(IEnumerable<(string Address, Lens Lens)> texts)
    {
        Work work = sheet.Work;
        foreach ((string address, Lens lens) in texts) work = lens.Write(work, sheet.Texts[address], _unit).Work;
        return work;
    }

    private BadInputException? Plan(Work work, out Plan? plan)
    {
        try
        {
            plan = work == sheet.Work ? sheet.Good : FollowingRings.Plan(sheet.Work, work);
            return null;
        }
        catch (BadInputException e)
        {
            plan = null;
            return e;
        }
    }

    private Sheet Result(Plan plan, List<(string Address, Lens Lens)> waiting, BadInputException? refusal = null, Work? refused = null)
    {
        var good = new Work(plan.Piece, plan.Shop);
        // A name that changed is part of its neighbours' addresses.
        string Now(string address) => LensBook.Find(sheet.Work, address) is Lens lens ? lens.AddressIn(good) : address;
        var texts = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (string address in _unreadable.Select(p => p.Address!).Concat(waiting.Select(w => w.Address))) texts[Now(address)] = sheet.Texts[address];
        List<FieldProblem> problems = [.. _unreadable.Select(p => p with { Address = Now(p.Address!) })];
        if (refusal is not null) problems.Add(Refused(refusal, refused!, waiting));
        else if (waiting.Count > 0) problems.AddRange(EachAlone(plan, waiting, Now));
        return sheet.Planned(plan) with { Texts = texts.ToImmutable(), Problems = [.. problems] };
    }

    // The library names the place in the refused work; the fields on the page are those of the good one.
    private FieldProblem Refused(BadInputException refusal, Work refused, List<(string Address, Lens Lens)> waiting)
    {
        string sentence = FieldProblem.Capital($"{refusal.Problem}; {refusal.Right}.");
        if (LensBook.Nearest(refused, refusal.Where) is Lens named) return new(named.AddressIn(sheet.Work), sentence);
        // What no field is named for is told at the field that brought it about.
        return waiting.Count == 1 ? new(waiting[0].Address, FieldProblem.Capital(refusal.Message)) : new(null, FieldProblem.Capital(refusal.Message));
    }

    private IEnumerable<FieldProblem> EachAlone(Plan plan, List<(string Address, Lens Lens)> waiting, Func<string, string> now)
    {
        foreach ((string address, Lens lens) in waiting)
        {
            Work tried = lens.Write(new(plan.Piece, plan.Shop), sheet.Texts[address], _unit).Work;
            string why = Plan(tried, out _) is BadInputException refusal ? $"{refusal.Problem}; {refusal.Right}." : "It waits for the other value that cannot be used.";
            yield return new(now(address), FieldProblem.Capital(why));
        }
    }
}
