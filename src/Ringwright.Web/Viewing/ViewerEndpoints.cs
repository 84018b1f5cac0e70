using System.IO.Compression;
using Microsoft.Net.Http.Headers;
using Ringwright.Core;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Output;
using Ringwright.Paper.Pictures.Pieces;

namespace Ringwright.Web.Viewing;

/// <summary>Meshes and flat pictures of the plans that are looked at, by version.</summary>
internal static class ViewerEndpoints
{
    private const string Gone = "This version of the piece is no longer kept; the page asks for the present one.";

    /// <summary>Where a flat picture of a version is.</summary>
    public static string PicturePath(string version, string picture, MeasureStyle style) =>
        $"/viewer/{version}/{picture}.svg?lengths={(style.Unit == LengthUnit.Millimetre ? "mm" : style.Fractions ? "fractions" : "inches")}";

    public static void MapViewer(this WebApplication app)
    {
        app.MapGet("/viewer/{version}/coarse.bin", (string version, HttpContext context, ViewerStore store) => Mesh(version, ViewerDetail.Coarse, context, store));
        app.MapGet("/viewer/{version}/fine.bin", (string version, HttpContext context, ViewerStore store) => Mesh(version, ViewerDetail.Fine, context, store));
        app.MapGet("/viewer/{version}/whole.svg", (string version, string? lengths, ViewerStore store) => Picture(version, lengths, store, PiecePage.Whole));
        app.MapGet("/viewer/{version}/unrolled.svg", (string version, string? lengths, ViewerStore store) => Picture(version, lengths, store, PiecePage.Unrolled));
    }

    // Overtaken by an edit while the request was on its way: that is no error, and the page has asked for the newer one.
    private static IResult NotKept(string version, ViewerStore store) => store.WasGiven(version) ? Results.NoContent() : Results.Text(Gone, statusCode: StatusCodes.Status404NotFound);

    private static IResult Mesh(string version, ViewerDetail detail, HttpContext context, ViewerStore store)
    {
        if (store.Find(version) is not { } viewed) return NotKept(version, store);
        try
        {
            byte[] packet = viewed.Packet(detail);
            context.Response.Headers.CacheControl = "private, no-cache";
            context.Response.Headers.Vary = "Accept-Encoding";
            var tag = new EntityTagHeaderValue($"\"{version}-{(detail == ViewerDetail.Fine ? "fine" : "coarse")}\"");
            if (!context.Request.Headers.AcceptEncoding.ToString().Contains("br", StringComparison.OrdinalIgnoreCase))
                return Results.Stream(new BrotliStream(new MemoryStream(packet), CompressionMode.Decompress), "application/octet-stream", entityTag: tag);
            context.Response.Headers.ContentEncoding = "br";
            return Results.Bytes(packet, "application/octet-stream", entityTag: tag);
        }
        catch (BadInputException e)
        {
            return Results.Text(e.Message, statusCode: StatusCodes.Status422UnprocessableEntity);
        }
    }

    private static IResult Picture(string version, string? lengths, ViewerStore store, Func<Plan, MeasureStyle, bool, Paper.Drawings.Drawing> draw)
    {
        if (store.Find(version) is not { } viewed) return NotKept(version, store);
        MeasureStyle style = lengths switch
        {
            "fractions" => MeasureStyle.InchFractions,
            "inches" => MeasureStyle.InchDecimals,
            _ => MeasureStyle.Millimetres,
        };
        try
        {
            return Results.Text(SvgWriter.Write(draw(viewed.Plan, style, true), viewed.Plan.Piece.Name), "image/svg+xml");
        }
        catch (Exception e) when (e is BadInputException or Paper.LayoutException)
        {
            return Results.Text(e.Message, statusCode: StatusCodes.Status422UnprocessableEntity);
        }
    }
}
