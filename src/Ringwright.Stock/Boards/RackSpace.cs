using Ringwright.Core.Boards;

namespace Ringwright.Stock.Boards;

/// <summary>A sound stretch of a board of one wood.</summary>
/// <param name="Board">Its board's place on the rack.</param>
/// <param name="Index">Which of the board's stretches.</param>
/// <param name="Length">Length, mm.</param>
/// <param name="Across">Width that strips can take when each is charged its width and a kerf, mm.</param>
/// <param name="Thickness">Thickness of the board, mm.</param>
/// <param name="Family">Which board it once was a part of.</param>
/// <param name="Weight">How much a mm² of its face counts: thickness, price, half for an offcut.</param>
internal sealed record Stretch(int Board, int Index, double Length, double Across, double Thickness, string Family, double Weight);

/// <summary>Demands that come from strips ripped and planed alike.</summary>
/// <param name="Width">Width of the strips, mm.</param>
/// <param name="Thickness">Thickness they are planed to, mm.</param>
/// <param name="Demands">The demands.</param>
internal sealed record StripClass(double Width, double Thickness, int[] Demands);

/// <summary>All of the rack and of the demands that is of one wood.</summary>
internal sealed class RackSpace
{
    public RackSpace(CuttingRequest request, string wood)
    {
        Request = request;
        int[] demands = [.. Enumerable.Range(0, request.Demands.Length).Where(d => request.WoodOf(request.Demands[d].Wood) == wood && request.Demands[d].ToSaw > 0)];
        Classes = [.. Alike(demands)];
        int[] boards = [.. Enumerable.Range(0, request.Rack.Boards.Length).Where(b => request.WoodOf(request.Rack.Boards[b].Wood) == wood)];
        double usual = Usual([.. boards.Select(b => request.Rack.Boards[b])]);
        Stretches = [.. boards.SelectMany(b => Of(b, usual))];
    }

    public CuttingRequest Request { get; }

    public StripClass[] Classes { get; }

    public Stretch[] Stretches { get; }

    public BoardRules Rules => Request.Rules;

    public StripDemand Demand(int demand) => Request.Demands[demand];

    /// <summary>Length of a strip of <paramref name="stretch"/> that pieces can take.</summary>
    public double Room(Stretch stretch) => stretch.Length - Rules.StripLoss;

    /// <summary>Strips of a class that fit across a stretch; 0 when it is too thin, or too short for any piece.</summary>
    public int StripsAcross(Stretch stretch, StripClass strips) =>
        Rules.CanMill(stretch.Thickness, strips.Thickness) && strips.Demands.Any(d => Demand(d).CountIn(Room(stretch)) > 0)
            ? Math.Max(0, (int)Math.Floor((stretch.Across + 1e-9) / (strips.Width + Rules.Kerf)))
            : 0;

    // By what they are compared with, not by what is near whom: the answer must not depend on their order.
    private IEnumerable<StripClass> Alike(int[] demands) => demands
        .GroupBy(d => (Math.Round(Demand(d).Width, 2), Math.Round(Demand(d).Thickness, 2), Demand(d).Piece == StripPiece.LayerBlank ? d : -1))
        .OrderByDescending(g => g.Key.Item1).ThenByDescending(g => g.Key.Item2)
        .Select(g => new StripClass(g.Max(d => Demand(d).Width), g.Max(d => Demand(d).Thickness), [.. g]));

    private IEnumerable<Stretch> Of(int index, double usual)
    {
        RackBoard board = Request.Rack.Boards[index];
        double price = board.Price is double own && usual > 0 ? Math.Clamp(own / Volume(board) / usual, 0.25, 4) : 1;
        double weight = board.Thickness.Millimetres * price * (board.CameFrom is null ? 1 : 0.5);
        return SoundStretches.Of(board, Rules.Kerf).Select((s, i) =>
            new Stretch(index, i, s.To - s.From, Rules.Across(board.Width.Millimetres), board.Thickness.Millimetres, SawnBoard.FamilyOf(board).Trim().ToUpperInvariant(), weight));
    }

    // Price of a mm³, in the middle of the boards that have one.
    private static double Usual(RackBoard[] boards)
    {
        double[] prices = [.. boards.Where(b => b.Price is not null).Select(b => b.Price!.Value / Volume(b)).Order()];
        return prices.Length == 0 ? 0 : prices[prices.Length / 2];
    }

    private static double Volume(RackBoard board) => board.Length.Millimetres * board.Width.Millimetres * board.Thickness.Millimetres;
}
