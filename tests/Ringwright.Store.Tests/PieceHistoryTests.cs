using CsCheck;
using Ringwright.Core;
using Ringwright.Core.Pieces;

namespace Ringwright.Store.Tests;

public sealed class PieceHistoryTests : IDisposable
{
    private static readonly Piece Plain = Desk.Piece();
    private readonly Desk _desk = new();
    private readonly DataStore _store;
    private readonly long _id;

    public PieceHistoryTests()
    {
        _store = _desk.Open();
        _id = _store.Pieces.Add(Noted("0"));
    }

    public void Dispose()
    {
        _store.Dispose();
        _desk.Dispose();
    }

    [Fact]
    public void Saving_within_minutes_goes_into_one_version()
    {
        foreach (int minute in Enumerable.Range(1, 12))
        {
            _desk.Wait(TimeSpan.FromMinutes(1));
            Save(minute);
        }

        // Begun at minute 0, 5 and 10; each holds what was saved last before the next began.
        Assert.Equal(["12", "9", "4"], Notes());
    }

    [Fact]
    public void A_state_with_a_name_is_never_saved_into()
    {
        _store.History.Keep(_id, " before the foot ");
        Save(1);
        Assert.Equal(["1", "0"], Notes());
        Assert.Equal([null, "before the foot"], _store.History.List(_id).Select(v => v.Name));
        Assert.Throws<BadInputException>(() => _store.History.Keep(_id, " "));
    }

    [Fact]
    public void Another_program_never_saves_into_what_this_one_saved()
    {
        using (DataStore other = _desk.Open()) other.Pieces.Save(_id, Noted("theirs"));
        _store.Pieces.SaveDraft(_id, "mine");
        Assert.Equal(["theirs", "theirs", "0"], Notes());
        Assert.Equal(["mine", null, null], _store.History.List(_id).Select(v => _store.History.Read(_id, v.Id).Draft));
    }

    [Fact]
    public void Going_back_can_be_gone_back_on()
    {
        _store.Pieces.SaveDraft(_id, "typed then");
        long then = _store.History.List(_id)[0].Id;
        _desk.Wait(TimeSpan.FromHours(1));
        _store.Pieces.Save(_id, Noted("later"), "typed later");
        _store.History.Restore(_id, then);
        PieceState state = _store.Pieces.Read(_id);
        Assert.Equal(("0", "typed then"), (state.Piece.Notes, state.Draft));
        Save(7);
        Assert.Equal(["7", "0", "later", "0"], Notes());
        Assert.Equal("typed later", _store.History.Read(_id, _store.History.List(_id)[2].Id).Draft);
    }

    [Fact]
    public void What_was_typed_is_not_overwritten_by_nothing()
    {
        _store.Pieces.SaveDraft(_id, "19 mm or so");
        Save(1);
        Assert.Equal(["1", "0"], Notes());
        Assert.Equal("19 mm or so", _store.History.Read(_id, _store.History.List(_id)[1].Id).Draft);
    }

    [Fact]
    public void Saving_the_same_again_changes_nothing()
    {
        _desk.Wait(TimeSpan.FromHours(1));
        Save(0);
        Assert.Equal(_desk.Now - TimeSpan.FromHours(1), _store.Pieces.Find(_id).Changed);
        Assert.Single(Notes());
    }

    // A year forward, two back and home again, as when a clock is set by hand or its battery is empty.
    [Fact]
    public void A_clock_that_jumps_leaves_the_versions_in_the_order_of_the_work()
    {
        var saved = new List<string>();
        foreach (int days in new[] { 0, 365, -730, 365, -1, 1 })
        {
            _desk.Wait(TimeSpan.FromDays(days));
            for (int i = 0; i < 2; i++)
            {
                _desk.Wait(TimeSpan.FromMinutes(6));
                saved.Add($"state {saved.Count}");
                _store.Pieces.Save(_id, _store.Pieces.Read(_id).Piece with { Notes = saved[^1] });
                _store.History.Keep(_id, saved[^1]);
            }
        }

        Assert.Equal(saved[^1], _store.Pieces.Read(_id).Piece.Notes);
        Assert.Equal(saved, _store.History.List(_id).Reverse().Select(v => v.Name).OfType<string>());
        PieceVersion first = _store.History.List(_id).Single(v => v.Name == saved[0]);
        _store.History.Restore(_id, first.Id);
        Assert.Equal(saved[0], _store.Pieces.Read(_id).Piece.Notes);
    }

    [Fact]
    public void A_version_of_another_piece_is_refused()
    {
        long other = _store.Pieces.Add(Noted("x"));
        long version = _store.History.List(other)[0].Id;
        Assert.Contains($"no version {version}", Assert.Throws<BadInputException>(() => _store.History.Restore(_id, version)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_year_of_work_leaves_few_versions_and_every_week()
    {
        for (int hour = 0; hour < 365 * 24; hour += 11)
        {
            _desk.Wait(TimeSpan.FromHours(11));
            Save(hour);
        }

        IReadOnlyList<PieceVersion> left = _store.History.List(_id);
        Assert.InRange(left.Count, 335 / 7 + 30, 335 / 7 + 35);
        Assert.All(left.Zip(left.Skip(1)), pair => Assert.InRange(pair.First.Saved - pair.Second.Saved, TimeSpan.Zero, TimeSpan.FromDays(14)));
        Assert.Equal("0", _store.History.Read(_id, left[^1].Id).Piece.Notes);
    }

    [Fact]
    public void Thinning_keeps_names_ends_and_one_for_each_slot_and_has_nothing_more_to_do_then() =>
        Gen.Select(Gen.Int[0, 60 * 24 * 90], Gen.Int[0, 9]).Array[1, 60].Sample(
            ages =>
            {
                PieceVersion[] all = [.. ages.OrderByDescending(a => a.Item1).Select((a, i) => new PieceVersion(i, _desk.Now - TimeSpan.FromMinutes(a.Item1), a.Item2 == 0 ? "named" : null))];
                PieceVersion[] kept = [.. all.Except(VersionThinning.Surplus(all, _desk.Now))];
                Assert.Empty(VersionThinning.Surplus(kept, _desk.Now));
                Assert.Contains(all[0], kept);
                Assert.Contains(all[^1], kept);
                Assert.All(all.Where(v => v.Name is not null || _desk.Now - v.Saved <= TimeSpan.FromDays(1)), v => Assert.Contains(v, kept));
                // Whatever is gone has a kept one after it on the same day, or within the same week when it is old.
                Assert.All(all.Except(kept), gone => Assert.Contains(kept, k => k.Id > gone.Id && k.Saved - gone.Saved < TimeSpan.FromDays(_desk.Now - gone.Saved <= TimeSpan.FromDays(30) ? 1 : 7)));
            },
            iter: 200);

    private static Piece Noted(string note) => Plain with { Notes = note };

    private void Save(int number) => _store.Pieces.Save(_id, Noted($"{number}"));

    private IEnumerable<string?> Notes() => _store.History.List(_id).Select(v => _store.History.Read(_id, v.Id).Piece.Notes);
}
