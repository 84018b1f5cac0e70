using Microsoft.AspNetCore.Components.Forms;
using Ringwright.Core;
using Ringwright.Core.Pieces;
using Ringwright.Web.Bench.Fields;

namespace Ringwright.Web.Library;

/// <summary>Where pieces come from and go to.</summary>
public partial class PiecesPage
{
    private string? _wrong;

    private void Begin(NewPiece start)
    {
        try
        {
            Piece piece = start.Make(Sheet);
            Bench.Put(piece);
            _wrong = null;
            Navigation.NavigateTo("/shape");
        }
        catch (BadInputException e)
        {
            _wrong = FieldProblem.Capital(e.Message);
        }
    }

    private void Open(Example example)
    {
        try
        {
            Put(example.Json, borrowed: true);
        }
        catch (BadInputException e)
        {
            _wrong = $"{example.Name} was not opened. {e.Message}";
        }
    }

    private async Task OpenFile(InputFileChangeEventArgs chosen) => _wrong = await UserFile.Read(chosen.File, json => Put(json));

    private void Put(string json, bool borrowed = false)
    {
        Bench.Open(json, borrowed);
        _wrong = null;
        Navigation.NavigateTo("/shape");
    }
}
