using System.Text;
using Ringwright.Core.Documents;
using Ringwright.Web.Bench;
using Ringwright.Web.Stations;

namespace Ringwright.Web.Library;

/// <summary>The files that can be had of shop and rack.</summary>
internal static class DeskFiles
{
    public const string ShopPath = "/files/shop.json";
    public const string RackPath = "/files/rack.json";

    public static void MapDeskFiles(this WebApplication app)
    {
        app.MapGet(ShopPath, (Workbench bench) => Json(DocumentJson.Write(bench.Now.Good.Shop), "shop.json"));
        app.MapGet(RackPath, (RackDesk desk) => desk.Rack is { } rack ? Json(DocumentJson.Write(rack), "rack.json")
            : Results.Text("Nothing is saved at present, so there is no rack.", statusCode: StatusCodes.Status404NotFound));
    }

    private static IResult Json(string text, string name) => Results.File(Encoding.UTF8.GetBytes(text), "application/json", name);
}
