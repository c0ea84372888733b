#pragma once

#include "core/base/entropy.h"
#include "core/sync/storage.h"

namespace lidlark::sync {

/// What a storage can be used for, or the first thing that bars it.
enum class Connection {
    Works,
    NoAnswer,     ///< Nobody there now.
    NotTrusted,   ///< The server's certificate is not trusted.
    NotLetIn,     ///< User, password or token do not open it.
    NoStorage,    ///< Something answers, but keeps no files there, or the folder above is missing.
    NoFolders,    ///< No folder can be made.
    NoWriting,    ///< No file can be written: perhaps only reading is allowed.
    Full,         ///< No room is left.
    NoListing,    ///< What is in a folder cannot be seen, or is not shown at once.
    NoRenaming,   ///< A file cannot be renamed: often a proxy in front of the server is in the way.
    RenamesOver,  ///< Renaming goes over what has the name: somebody's file would be lost.
    ChangesBytes, ///< What is read is not what was written.
    NoDeleting    ///< A file cannot be taken away.
};

/// Tries on @p storage all that publishing and reading will ask of it, with a few small files of
/// its own, in a folder of its own, which stays there empty.
Connection checkConnection(Storage &storage, Entropy &entropy);

} // namespace lidlark::sync
