using Ringwright.Core.Boards;
using Ringwright.Core.Documents;
using Ringwright.Store.Sqlite;

namespace Ringwright.Store.Boards;

/// <summary>The rack as rows, within a transaction. Each row's document carries its format and version, so that it can be read for good.</summary>
internal static class RackRows
{
    private const string FirstName = "My rack";

    /// <summary>The rack; an empty one before there was any.</summary>
    public static Rack Read(Session session)
    {
        Rack head = session.One("SELECT document FROM rack", r => DocumentJson.ReadRack(r.GetString(0))) ?? new Rack { Name = FirstName, Boards = [] };
        return head with { Boards = [.. session.All("SELECT document FROM board ORDER BY place", r => DocumentJson.ReadRack(r.GetString(0)).Boards[0])] };
    }

    /// <summary>Puts a rack in the place of the one before.</summary>
    public static void Write(Session session, Rack rack)
    {
        session.Run("INSERT INTO rack (id, document) VALUES (1, $document) ON CONFLICT (id) DO UPDATE SET document = $document", ("$document", DocumentJson.Write(rack with { Boards = [] })));
        session.Run("DELETE FROM board");
        foreach (RackBoard board in rack.Boards)
        {
            session.Run(
                "INSERT INTO board (label, wood, length, width, thickness, document) VALUES ($label, $wood, $length, $width, $thickness, $document)",
                ("$label", board.Label.Trim()), ("$wood", board.Wood), ("$length", board.Length.Millimetres), ("$width", board.Width.Millimetres), ("$thickness", board.Thickness.Millimetres),
                ("$document", DocumentJson.Write(new Rack { Name = rack.Name, Units = rack.Units, Boards = [board] })));
        }
    }
}
