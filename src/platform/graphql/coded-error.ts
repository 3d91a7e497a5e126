import { GraphQLError } from 'graphql';

/** An error that the caller may see, with a stable code. Everything else reaches the caller as "internal". */
export class CodedError extends GraphQLError {
  constructor(code: 'not-signed-in' | 'not-allowed' | 'bad-request' | 'too-many', message: string) {
    super(message, { extensions: { code } });
    this.name = 'CodedError';
  }
}
