#include "app/console/commands.h"
#include "app/paper/contact_sheet.h"
#include "app/paper/sheet_painter.h"

#include <QDir>
#include <QSaveFile>

#include <CLI/CLI.hpp>

namespace topwire {

namespace {

/// Dots an inch of a contact sheet as a picture: eight drawings across a web page.
constexpr double pictureDots = 118;

void declareDrawings(CLI::App& command, Arguments& arguments) {
  auto* wanted = command.add_option_group("what to write");
  wanted->add_option("--svg", arguments.folder, "The folder for an SVG of each operation")
      ->type_name("DIR");
  wanted
      ->add_option("--contact-sheet",
                   arguments.target,
                   "One sheet of them all: a file that ends in .svg, .png or .pdf")
      ->check(CLI::Validator{
          [](const std::string& name) {
            const bool known = name.ends_with(".svg") || name.ends_with(".png")
                               || name.ends_with(".pdf");
            return known ? std::string{} : name + " does not end in .svg, .png or .pdf";
          },
          {}})
      ->type_name("OUT");
  wanted->require_option(1, 2);
  command.add_option("--programme", arguments.drawnProgramme, "The programme, by its id")
      ->capture_default_str()
      ->type_name("ID");
  command
      .add_option("--leaf",
                  arguments.leaf,
                  "What is done in this leaf, as the tree then stands; else each "
                  "operation in its first leaf")
      ->check(CLI::Range(-10, LeafRange::open))
      ->type_name("N");
}

Done refuseToWrite(const QString& path) {
  return refuse(Sentence{phrase("Console",
                                "\"%1\" was not written. Choose a folder that can be "
                                "written to and has room."),
                         {path.toStdString()}});
}

Done writeBytes(const QString& path, const QByteArray& bytes) {
  QSaveFile file{path};
  const bool written = file.open(QIODevice::WriteOnly)
                       && file.write(bytes) == bytes.size() && file.commit();
  return written ? Done{} : refuseToWrite(path);
}

Done writeEach(const QString& folder, const std::vector<OperationArt>& art) {
  const QDir dir{folder};
  if (!dir.mkpath(QStringLiteral("."))) return refuseToWrite(folder);
  for (const OperationArt& one : art) {
    const QString name = QString::fromStdString(one.operation->id + ".svg");
    const QString svg = toSvg(one.drawing, Qt::black, Qt::white);
    if (Done written = writeBytes(dir.filePath(name), svg.toUtf8()); !written)
      return written;
  }
  return {};
}

Done writeSheet(const QString& path, const Page& page, const QString& title) {
  if (path.endsWith(QStringLiteral(".pdf"))) return writePdf(path, {page}, title);
  if (path.endsWith(QStringLiteral(".svg")))
    return writeBytes(path, toSvg(page).toUtf8());
  const QImage image =
      imageOf(page, pictureDots).convertToFormat(QImage::Format_Grayscale8);
  return image.save(path) ? Done{} : refuseToWrite(path);
}

Answer runDrawings(Surroundings& surroundings, const Arguments& arguments) {
  const Programmes& programmes = surroundings.trade.programmes;
  const auto found = programmes.find(arguments.drawnProgramme);
  if (found == programmes.end()) {
    Done unknown = refuse(Sentence{
        phrase("Console", "There is no programme \"%1\"; see its id in its file."),
        {arguments.drawnProgramme}});
    return problemsOf(unknown);
  }
  const Programme& programme = found->second;
  const auto art = artOf(programme, arguments.leaf);
  Done written;
  if (!arguments.folder.empty())
    written = writeEach(QString::fromStdString(arguments.folder), art);
  if (written && !arguments.target.empty())
    written = writeSheet(QString::fromStdString(arguments.target),
                         contactSheet(art, arguments.language),
                         QString::fromStdString(programme.name.in(arguments.language)));
  if (!written) return problemsOf(written);
  const Sentence said{phrase("Console", "%1: drawings written: %2."),
                      {programme.name, static_cast<std::int64_t>(art.size())}};
  return Outcome{spoken(said, arguments.language) + '\n', {}};
}

}  // namespace

std::span<const Command> commandsOfDrawings() {
  static constexpr Command commands[] = {
      {"drawings",
       "Write the line drawings of a programme's operations",
       "drawings --svg drawings --contact-sheet drawings.pdf --leaf 3",
       declareDrawings,
       runDrawings},
  };
  return commands;
}

}  // namespace topwire
