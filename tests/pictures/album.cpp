#include "tests/pictures/album.h"

#include <QFile>
#include <QSet>

namespace lidlark::pictures {

QString Album::fileOf(const QString &name) const
{
    return m_references.filePath(name + QStringLiteral(".png"));
}

QString Album::compare(const QString &name, const QImage &now)
{
    m_met.append(name);
    const QImage reference(fileOf(name));
    if (reference.isNull())
        return QStringLiteral("%1: no reference picture. Look at it, then run with --renew.")
            .arg(name);
    const Likeness likeness = pictures::compare(reference, now);
    if (likeness.isAlike())
        return {};
    const QString file =
        m_differences.filePath(QString(name).replace(u'/', u'-') + QStringLiteral(".png"));
    (void)m_differences.mkpath(QStringLiteral("."));
    const bool written = sideBySide(reference, now).save(file);
    return QStringLiteral("%1: %2 dots differ, %3 may. See %4")
        .arg(name)
        .arg(likeness.sameSize ? QString::number(likeness.differing) : QStringLiteral("all"))
        .arg(Likeness::mostDots)
        .arg(written ? file : QStringLiteral("nothing: it could not be written"));
}

bool Album::renew(const QString &name, const QImage &now)
{
    m_met.append(name);
    const QString file = fileOf(name);
    if (!m_references.mkpath(QFileInfo(file).path()))
        return false;
    // What is alike is left as it is, so that a renewal changes what has changed.
    if (pictures::compare(QImage(file), now).isAlike() && QFile::exists(file))
        return true;
    return kept(now).save(file, "PNG", 0); // 0: as small as it gets
}

QStringList Album::leftOver() const
{
    QStringList left;
    const QSet<QString> met(m_met.begin(), m_met.end());
    QSet<QString> folders;
    for (const QString &name : m_met)
        folders.insert(name.section(u'/', 0, 0));
    for (const QString &folder : std::as_const(folders)) {
        const QStringList files =
            QDir(m_references.filePath(folder)).entryList({QStringLiteral("*.png")});
        for (const QString &file : files) {
            const QString name = folder + u'/' + file.chopped(4);
            if (!met.contains(name))
                left.append(name);
        }
    }
    return left;
}

void Album::clear()
{
    const QStringList left = leftOver();
    for (const QString &name : left)
        QFile::remove(fileOf(name));
}

} // namespace lidlark::pictures
