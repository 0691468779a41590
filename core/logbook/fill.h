// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <string>
#include <string_view>

#include "core/logbook/answers.h"
#include "core/logbook/logbook.h"
#include "core/seal/seal.h"

namespace taut::logbook {

/// A run whose document is laid out already, by somebody who knows what it answers.
struct LaidOut {
    std::string document;  ///< as seal::write() gives it, without what sealing adds
    RunAnswers answers;
};
/// Of a run's document: `texts` has the words that it names and the text of its job.
[[nodiscard]] LaidOut laidOut(const seal::Document& run, const seal::TextBySha& texts);

/// A door for very many seals at once, for demos and for measuring: documents that were made elsewhere go into the
/// chain one after the other, signed, and into the tables by the code that every seal goes by. It opens only while the
/// logbook has no run yet, so that nothing that people did ever lies behind or among what was made. All of it is one
/// transaction: until finish() returns, nothing is there, and what ends without it leaves nothing. Meanwhile the
/// writer waits. Guards against rows out of their order stand aside as long, since the numbers and links are given
/// here; indexes and the search are made at the end, each in one go.
class Fill {
public:
    /// fill.not_empty: a run was begun here.
    [[nodiscard]] static Result<std::unique_ptr<Fill>> begin(Writer& writer);
    ~Fill();
    Fill(const Fill&) = delete;
    Fill& operator=(const Fill&) = delete;

    /// Seals a document as the next one, at this moment. The signature goes with a kind of document that is signed.
    /// What the disk says comes back from a later call at the latest: writing goes on behind the caller's back.
    [[nodiscard]] Result<seal::Link> add(seal::Document document, const people::Signer& by, Instant at);
    /// The same of a run that is laid out. Its answers are taken as they are; `verify`, to the depth, looks at them.
    [[nodiscard]] Result<seal::Link> add(LaidOut run, const people::Signer& by, Instant at);
    /// The edition in which a definition stands; a text that stands in none becomes the next.
    [[nodiscard]] Result<int> define(std::string_view what, const run::Source& source, const people::Signer& by,
                                     Instant at);
    /// How many seals were added.
    [[nodiscard]] std::uint64_t added() const;
    /// All that was added is on disk when this returns.
    [[nodiscard]] Result<Done> finish();

private:
    struct Impl;
    explicit Fill(std::unique_ptr<Impl> impl);
    std::unique_ptr<Impl> m_impl;
};

}  // namespace taut::logbook
